/** A run as people keep it and hand it on: the run itself, and beside it what the trade writes on the sheet. */
import { type Ticks, ticks } from '../../trade/length.ts';
import type { Piece } from '../straight.ts';
import type { Run } from '../types.ts';

/** A piece as it was cut: what the tape showed, by whom, on which day (`YYYY-MM-DD`). */
export interface Built {
  readonly piece: string;
  readonly cut: Ticks;
  readonly by: string;
  readonly on: string;
}

export interface RunFile {
  readonly v: 1;
  readonly kind: 'run';
  /** Number and name of the run on the sheets of the works. */
  readonly number: string;
  readonly name: string;
  /** Where it hangs, and who builds it. */
  readonly place: string;
  readonly crew: string;
  /** Tags of what stands at the start, and at the ends by leg. */
  readonly tags: { readonly start: string; readonly ends: Readonly<Record<string, string>> };
  readonly run: Run;
  readonly built: readonly Built[];
}

/** A run with nothing written beside it. */
export const bareFile = (run: Run): RunFile => ({
  v: 1,
  kind: 'run',
  number: '',
  name: '',
  place: '',
  crew: '',
  tags: { start: '', ends: {} },
  run,
  built: [],
});

export interface BuiltBeside {
  readonly piece: Piece;
  readonly built: Built | null;
  /** What was cut more than planned; below 0, less. */
  readonly off: Ticks | null;
}

/** As built beside as planned, a row a piece; what was cut of pieces that the run no longer has comes apart. */
export function builtBeside(
  pieces: readonly Piece[],
  built: readonly Built[],
): { readonly rows: readonly BuiltBeside[]; readonly strays: readonly Built[] } {
  const rows = pieces.map((piece): BuiltBeside => {
    const own = built.find((one) => one.piece === piece.id) ?? null;
    return { piece, built: own, off: own === null ? null : ticks(own.cut - piece.cut) };
  });
  const ids = new Set(pieces.map(({ id }) => id));
  return { rows, strays: built.filter(({ piece }) => !ids.has(piece)) };
}

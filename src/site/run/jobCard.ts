/** What a job card says of a run: gathered, equal things together, and cut to what one sheet of paper holds. */
import type { RunFile } from '../../run/edit/file.ts';
import type { Finding } from '../../run/inspect/finding.ts';
import type { ResolvedFitting, ResolvedLeg, ResolvedRun } from '../../run/resolved.ts';
import type { Takeoff } from '../../run/takeoff.ts';
import type { JointKind } from '../../run/types.ts';
import type { Ticks } from '../../trade/length.ts';

export interface CutRow {
  readonly pieces: readonly string[];
  readonly cut: Ticks;
}
export interface SpliceRow {
  readonly leg: string;
  readonly name: string;
  readonly at: Ticks;
  readonly kind: JointKind;
  readonly opening: Ticks;
}
export interface SupportRow {
  readonly leg: string;
  readonly way: 'horizontal' | 'vertical';
  readonly supports: readonly { readonly name: string; readonly at: Ticks; readonly hold: string }[];
}

export interface JobCard {
  readonly cuts: readonly CutRow[];
  readonly splices: readonly SpliceRow[];
  readonly supports: readonly SupportRow[];
  readonly jumpers: Takeoff['jumpers'];
  readonly findings: readonly Finding[];
  readonly fittings: readonly { readonly item: string; readonly count: number }[];
  /** Tasks that the run demands of the crew, in the order of the job. */
  readonly needs: readonly string[];
  readonly steps: readonly CardStep[];
  /** Rows that found no room, by list. */
  readonly left: {
    readonly cuts: number;
    readonly splices: number;
    readonly supports: number;
    readonly jumpers: number;
    readonly findings: number;
  };
}
export type CardStep = 'hang' | 'drop' | 'cut' | 'fit' | 'join' | 'gap' | 'bond' | 'cables';

/** Rows of one sheet, A4 or Letter, beside a figure. */
const ROOM = { beside: 11, supports: 3, perSupportRow: 9, jumpers: 4, findings: 2 } as const;

export function jobCard(
  resolved: ResolvedRun,
  takeoff: Takeoff,
  findings: readonly Finding[],
  { run }: Pick<RunFile, 'run'>,
): JobCard {
  const cuts = grouped(resolved.legs);
  const splices = resolved.legs.flatMap(({ leg, joints }) =>
    joints.map(({ name, at, kind, opening }): SpliceRow => ({ leg, name, at, kind, opening })),
  );
  const supports = supportRows(resolved.legs);
  // Both lists stand beside the figure: the shorter lends its room to the longer.
  const cutRoom = Math.max(Math.ceil(ROOM.beside / 2), ROOM.beside - splices.length);
  const cutsShown = cuts.slice(0, cutRoom);
  const splicesShown = splices.slice(0, ROOM.beside - cutsShown.length);
  const supportsShown = supports.slice(0, ROOM.supports);
  const jumpersShown = takeoff.jumpers.slice(0, ROOM.jumpers);
  const findingsShown = findings.slice(0, ROOM.findings);
  const count = (rows: readonly SupportRow[]) => rows.reduce((sum, row) => sum + row.supports.length, 0);
  return {
    cuts: cutsShown,
    splices: splicesShown,
    supports: supportsShown,
    jumpers: jumpersShown,
    findings: findingsShown,
    fittings: takeoff.hardware.flatMap(({ item, count: n }) =>
      item.startsWith('fitting:') ? [{ item, count: n }] : [],
    ),
    needs: needsOf(resolved, takeoff),
    steps: stepsOf(resolved, takeoff, run),
    left: {
      cuts: pieces(cuts) - pieces(cutsShown),
      splices: splices.length - splicesShown.length,
      supports: resolved.legs.reduce((sum, l) => sum + l.supports.length, 0) - count(supportsShown),
      jumpers: takeoff.jumpers.length - jumpersShown.length,
      findings: findings.length - findingsShown.length,
    },
  };
}

const pieces = (rows: readonly CutRow[]) => rows.reduce((sum, row) => sum + row.pieces.length, 0);

/** Pieces of one length in one row, in order of travel. */
function grouped(legs: readonly ResolvedLeg[]): readonly CutRow[] {
  const rows = new Map<Ticks, string[]>();
  for (const { id, cut } of legs.flatMap((leg) => leg.pieces)) {
    const row = rows.get(cut);
    if (row === undefined) rows.set(cut, [id]);
    else row.push(id);
  }
  return [...rows].map(([cut, ids]) => ({ cut, pieces: ids }));
}

/** A row a leg, parted where one leg has more supports than a row holds. */
function supportRows(legs: readonly ResolvedLeg[]): readonly SupportRow[] {
  return legs.flatMap(({ leg, supports, plumb }) => {
    const rows: SupportRow[] = [];
    for (let i = 0; i < supports.length; i += ROOM.perSupportRow) {
      rows.push({
        leg,
        way: plumb ? 'vertical' : 'horizontal',
        supports: supports.slice(i, i + ROOM.perSupportRow).map(({ name, at, hold }) => ({ name, at, hold })),
      });
    }
    return rows;
  });
}

const FITTING_TASK: Readonly<Record<string, string>> = {
  flat: 'T08a',
  inside: 'T08b',
  outside: 'T08b',
  tee: 'T08c',
  cross: 'T08c',
  reducer: 'T08d',
  hinge: 'T08e',
};
const taskOf = ({ item }: Pick<ResolvedFitting, 'item'>): string =>
  FITTING_TASK[item.kind === 'elbow' ? item.turn : item.kind] ?? 'T08';

/** Tasks by what stands on the run: its supports, joints, fittings, start, jumpers and cables. */
export function needsOf(resolved: ResolvedRun, takeoff: Pick<Takeoff, 'jumpers'>): readonly string[] {
  const { legs, fittings, start, run } = resolved;
  const joints = legs.flatMap((leg) => leg.joints);
  const supports = legs.flatMap((leg) => leg.supports);
  const has = (task: string, when: boolean) => (when ? [task] : []);
  const ends = run.ends ?? [];
  return [
    ...new Set([
      ...has(
        'T03',
        supports.some(({ way }) => way === 'horizontal'),
      ),
      ...has(
        'T04',
        supports.some(({ way }) => way === 'vertical'),
      ),
      'T05',
      'T06',
      ...has(
        'T07',
        joints.some(({ kind }) => kind === 'socketed' || kind === 'butt'),
      ),
      ...fittings.map(taskOf),
      ...has(
        'T08e',
        joints.some(({ kind }) => kind === 'hinged'),
      ),
      ...has('T09', start.kind === 'ladder'),
      ...has(
        'T10',
        joints.some(({ kind }) => kind === 'expansion' || kind === 'gap') ||
          start.joint === 'expansion' ||
          ends.some(({ joint }) => joint === 'expansion'),
      ),
      ...has('T11', takeoff.jumpers.length > 0),
      ...has('T12', (run.cables ?? []).length > 0),
    ]),
  ].sort();
}

function stepsOf(
  { legs, fittings }: ResolvedRun,
  { jumpers, gaps }: Takeoff,
  run: RunFile['run'],
): readonly CardStep[] {
  const supports = legs.flatMap((leg) => leg.supports);
  const joints = legs.flatMap((leg) => leg.joints);
  const has = (step: CardStep, when: boolean): readonly CardStep[] => (when ? [step] : []);
  return [
    ...has(
      'hang',
      supports.some(({ way }) => way === 'horizontal'),
    ),
    ...has(
      'drop',
      supports.some(({ way }) => way === 'vertical'),
    ),
    'cut',
    ...has('fit', fittings.length > 0),
    ...has(
      'join',
      joints.some(({ kind }) => kind === 'socketed' || kind === 'butt' || kind === 'hinged'),
    ),
    ...has('gap', gaps.length > 0),
    ...has('bond', jumpers.length > 0),
    ...has('cables', (run.cables ?? []).length > 0),
  ];
}

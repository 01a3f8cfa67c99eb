/** What was found of an answer, as its entry shows it: which marks hold, what is looked at again and where. Pure. */
import type { TapFound } from '../drawing/tap/given.ts';
import { askOf, type Draw } from '../practice/draw.ts';
import type { Finding } from '../practice/grade.ts';
import type { Answer, World } from '../practice/model.ts';
import type { Say } from '../trade/answer.ts';
import { inches, tryLength } from '../trade/length.ts';

export interface Taped {
  readonly holds: boolean;
  /** Of each mark on a run, whether it holds; `undefined` where only the whole can be told. */
  readonly marks: readonly boolean[] | undefined;
  /** Places on a run to look at again, as far as they are told. */
  readonly found: readonly TapFound[];
  /** Of a job's step, what was found of its parts. */
  readonly parts: Readonly<Record<string, Taped>>;
}

interface Of {
  readonly draw: Draw;
  readonly world: World;
  /** What was given to the ask of this finding. */
  readonly given: Answer | undefined;
  /** The number of its note; null where it has none. */
  readonly note: number | null;
}

/** @param finding  of the ask that was answered */
export function tapedOf(finding: Finding, { draw, world, given, note }: Of): Taped {
  const holds = finding.verdict === 'holds' || finding.verdict === 'holds from there';
  return {
    holds,
    marks: finding.marks,
    found: holds ? [] : foundOf(finding, { draw, world, given, note }),
    parts: Object.fromEntries(
      Object.entries(finding.parts ?? {}).map(([part, held]): [string, Taped] => [
        part,
        { holds: held, marks: undefined, found: [], parts: {} },
      ]),
    ),
  };
}

/** Marks that do not hold, and places that the model's notes name. */
function foundOf(finding: Finding, { draw, world, given, note }: Of): readonly TapFound[] {
  if (!Array.isArray(given) || given.some((one) => typeof one !== 'object')) return [];
  const number = note ?? 1;
  const marks = (given as readonly { readonly leg: string; readonly at: number }[]).flatMap((mark, i) =>
    finding.marks?.[i] === false ? [{ leg: mark.leg, at: mark.at, note: number }] : [],
  );
  const notes = askOf(draw.model, finding.ask).notes?.(draw.plan, world, given as Answer) ?? [];
  return [...marks, ...notes.flatMap((say) => placeIn(say, number))];
}

/** The place that a note names, if it names one. */
function placeIn({ values = {} }: Say, note: number): readonly TapFound[] {
  const { leg, at } = values;
  if (leg === undefined || at === undefined) return [];
  const length = tryLength(at);
  return typeof length === 'number' ? [{ leg: String(leg), at: inches(length), note }] : [];
}

/**
 * How a look was taken, beside what was measured: the shift, the place where the task knows no pair for it, and whether
 * it was first written on paper. The body of a check has no field for these, so each is a row of `measured` of exactly
 * this form; who does not know the form reads it as a row. FORMAT.md lists them.
 */
import type { Measured } from './bodies.ts';

/** The shift is that of the day seen: a night shift past midnight is seen on the day the calendar shows. */
export const shifts = ['day', 'night'] as const;
export type Shift = (typeof shifts)[number];
export const places = ['bench', 'ladder', 'lift', 'scaffold'] as const;
export type Place = (typeof places)[number];

export interface Circumstances {
  readonly shift: Shift | null;
  readonly place: Place | null;
  /** It was written on a paper sheet first, and entered from it. */
  readonly paper: boolean;
}

/** What each row is called, what it may say, and how that stands in `wanted`. */
const rows = {
  shift: { wanted: 'day or night', values: shifts },
  place: { wanted: 'bench, ladder, lift or scaffold', values: places },
  'first written': { wanted: 'here or on paper', values: ['on paper'] },
} as const;

/** The rows that say it; nothing is said of what is open. */
export function circumstanceRows({ shift, place, paper }: Circumstances): readonly Measured[] {
  const row = (what: keyof typeof rows, got: string | null): readonly Measured[] =>
    got === null ? [] : [{ what, wanted: rows[what].wanted, got, tool: null }];
  return [...row('shift', shift), ...row('place', place), ...row('first written', paper ? 'on paper' : null)];
}

const isCircumstance = ({ what, wanted, got, tool }: Measured): boolean =>
  Object.entries(rows).some(
    ([name, { wanted: asks, values }]) =>
      what === name && wanted === asks && tool === null && (values as readonly string[]).includes(got),
  );

/** What the rows of a check say of how the look was taken. */
export function circumstancesOf(measured: readonly Measured[]): Circumstances {
  const said = new Map(measured.filter(isCircumstance).map(({ what, got }) => [what, got]));
  return {
    shift: (said.get('shift') as Shift | undefined) ?? null,
    place: (said.get('place') as Place | undefined) ?? null,
    paper: said.has('first written'),
  };
}

/** The rows of a check that are measures. */
export const measuresOf = (measured: readonly Measured[]): readonly Measured[] =>
  measured.filter((row) => !isCircumstance(row));

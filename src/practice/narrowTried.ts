/**
 * What a narrowing does to a sheet, found by drawing: whether anything is left to be drawn, and whether benches still
 * get draws of their own (README.md, "Narrowed sheets"). Only narrowed families are tried: of a whole one its proofs
 * say both.
 */
import { type Draw, drawOf, Undrawable } from './draw.ts';
import type { Family } from './family.ts';
import type { World } from './model.ts';
import { narrowed } from './narrow.ts';
import { type Practice, type Sheet, sheetSeed } from './sheet.ts';

/** Benches that are tried: the first of them. */
export const BENCHES_TRIED = 5;

export type Drawn =
  | { readonly draw: Draw }
  /** `narrow`: no try of this seed can be used, which is for the narrowing to mend; else the content lacks something. */
  | { readonly none: 'narrow' | 'content'; readonly why: string };

/** The draw of a seed, or why there is none: a page or a check goes on without it. */
export function tryDraw(family: Family, seed: string, world: World): Drawn {
  try {
    return { draw: drawOf(family, seed, world) };
  } catch (cause) {
    if (cause instanceof Undrawable)
      return { none: 'narrow', why: cause.faults.map(({ message }) => message).join('; ') };
    return { none: 'content', why: cause instanceof Error ? cause.message : String(cause) };
  }
}

export type NarrowTrouble = {
  /** Which of the sheet's families, from 0. */
  readonly at: number;
  readonly family: string;
} & (
  | {
      readonly trouble: 'undrawable';
      readonly bench: number;
      readonly none: 'narrow' | 'content';
      readonly why: string;
    }
  /** Two benches that get the same, place by place. */
  | { readonly trouble: 'alike'; readonly benches: readonly [number, number] }
);

/**
 * What is wrong with the narrowed families of a sheet, at most one trouble each, in the order of the sheet.
 * @param benches  that the sheet is for; of those tried, no more than these are held against each other
 */
export function narrowTroubles(
  { id, families }: Pick<Sheet, 'id' | 'families'>,
  { families: known, world }: Pick<Practice, 'families' | 'world'>,
  benches = BENCHES_TRIED,
): readonly NarrowTrouble[] {
  let next = 1;
  return families.flatMap(({ family: name, draws, narrow }, at): readonly NarrowTrouble[] => {
    const first = next;
    next += draws;
    const family = known.get(name);
    if (family === undefined || narrow === undefined) return [];
    const less = narrowed(family, narrow);
    const places = Array.from({ length: draws }, (_, k) => first + k);
    const kept = new Map<string, Drawn>();
    const drawn = (bench: number, place: number) => {
      const seed = sheetSeed(id, bench, place);
      const one = kept.get(seed) ?? tryDraw(less, seed, world);
      kept.set(seed, one);
      return one;
    };
    const found = undrawableAt(places, drawn) ?? alikeAt(places, drawn, benches);
    return found === undefined ? [] : [{ at, family: name, ...found }];
  });
}

type DrawnAt = (bench: number, place: number) => Drawn;

/** The first and the last place at every bench that is tried. */
function undrawableAt(places: readonly number[], drawn: DrawnAt) {
  const ends = new Set([places[0] ?? 1, places.at(-1) ?? 1]);
  for (let bench = 1; bench <= BENCHES_TRIED; bench++)
    for (const place of ends) {
      const one = drawn(bench, place);
      if ('none' in one) return { trouble: 'undrawable', bench, ...one } as const;
    }
  return undefined;
}

/** Place by place, only benches that were alike so far are drawn again: where benches differ, the first place shows it. */
function alikeAt(places: readonly number[], drawn: DrawnAt, benches: number) {
  const tried = Math.min(benches, BENCHES_TRIED);
  let alike: readonly (readonly number[])[] = [Array.from({ length: tried }, (_, k) => k + 1)];
  for (const place of places) {
    alike = alike.flatMap((group) => {
      const same = Map.groupBy(group, (bench) => whatIsGot(drawn(bench, place)));
      return [...same.values()].filter(({ length }) => length > 1);
    });
    if (alike.length === 0) return undefined;
  }
  const [one, other] = alike.flat();
  return one === undefined || other === undefined
    ? undefined
    : ({ trouble: 'alike', benches: [one, other] } as const);
}

/** As the proofs tell draws apart: everything told, and what is right. */
const whatIsGot = (drawn: Drawn): string =>
  'none' in drawn ? drawn.why : JSON.stringify([drawn.draw.facts, drawn.draw.right]);

/** What the bonding diagram lists, place by place along the run. */

import type { Catalogue } from '../../run/catalogue.ts';
import { type JumperPlace, jumperPlaces } from '../../run/jumpers.ts';
import type { ResolvedLeg } from '../../run/resolved.ts';
import type { RunTables } from '../../run/tables.ts';
import type { Speak } from '../../trade/say.ts';
import { shortLength } from '../../trade/shortLength.ts';
import { directionWords, fittingWords } from '../direction.ts';
import type { RunGiven } from '../runGiven.ts';
import { jointNames } from '../runNames.ts';

export interface LegRow {
  readonly kind: 'leg';
  readonly leg: ResolvedLeg;
  readonly parts: readonly string[];
  /** Whether its metal goes on from the row above. */
  readonly follows: boolean;
}

/** Where the metal of the run begins or ends; `branch` where a leg goes on from one that is not the row above. */
type At = 'start' | 'end' | 'branch' | null;

export interface JumperRow {
  readonly kind: 'jumper';
  readonly place: string;
  readonly parts: readonly string[];
  readonly end: At;
}

/** One place or several on end that need none. */
export interface PlainRow {
  readonly kind: 'plain';
  readonly parts: readonly string[];
  readonly end: At;
}

export type Row = LegRow | JumperRow | PlainRow;

interface Needs extends RunGiven {
  readonly tables: RunTables;
  readonly catalogue: Catalogue;
}

/** Rows by legs in order of travel, then along the leg. */
export function rowsOf(given: Needs, speak: Speak): readonly Row[] {
  const { resolved, tables, catalogue } = given;
  const places = jumperPlaces(resolved, catalogue, tables);
  const say = (key: string, values: Record<string, string | number> = {}) =>
    speak({ say: `rundrawing.${key}`, values });
  return resolved.legs.flatMap((leg, i) => {
    const follows = leg.parent === null || resolved.legs[i - 1] === leg.parent;
    const head: LegRow = {
      kind: 'leg',
      leg,
      follows,
      parts: [shortLength(leg.length), directionWords(leg, speak)],
    };
    let rows: Row[] = [];
    let plain: { readonly names: string[]; readonly end: PlainRow['end'] } | undefined;
    const flush = () => {
      if (plain !== undefined)
        rows.push({ kind: 'plain', parts: plainParts(plain.names, say), end: plain.end });
      plain = undefined;
    };
    const own = places.filter((p) => p.leg === leg);
    for (const [k, place] of own.entries()) {
      // What stands at the leg's first working point stands before it.
      if (k === 1) {
        flush();
        rows = [...rows, head];
      }
      const end = endOf(place, leg, follows);
      const name = nameOf(place, given, speak);
      const from = end === 'branch' ? [say('fromLeg', { leg: leg.parent?.leg ?? '' })] : [];
      if (place.reason === null && place.given === null && end === null) {
        plain = { names: [...(plain?.names ?? []), name], end: null };
        continue;
      }
      flush();
      if (place.reason === null && place.given === null)
        rows.push({ kind: 'plain', parts: [say('noneNeeded', { place: name }), ...from], end });
      else rows.push({ kind: 'jumper', place: name, parts: [...partsOf(place, say), ...from], end });
    }
    flush();
    return own.length > 1 ? rows : [...rows.slice(0, 1), head, ...rows.slice(1)];
  });
}

function endOf({ at, field }: JumperPlace, leg: ResolvedLeg, follows: boolean): At {
  if (field === 'start') return 'start';
  if (leg.fittingAfter === null && at === leg.length) return 'end';
  return !follows && at === 0 ? 'branch' : null;
}

function plainParts(
  names: readonly string[],
  say: (key: string, values?: Record<string, string | number>) => string,
): readonly string[] {
  const [first = '', last = ''] = [names[0], names.at(-1)];
  return names.length < 3
    ? names.map((place) => say('noneNeeded', { place }))
    : [say('noneNeededOf', { first, last, count: names.length })];
}

/** What stands at a place: the start, an end, a fitting, a joint with its place. */
function nameOf({ leg, at, field }: JumperPlace, { resolved, tags }: RunGiven, speak: Speak): string {
  const say = (key: string, values: Record<string, string | number> = {}) =>
    speak({ say: `rundrawing.${key}`, values });
  if (field === 'start') return tags?.start ?? say(`startAt-${resolved.start.kind}`);
  if (field.startsWith('joints')) {
    const joint = leg.joints.find((j) => j.field === field);
    const name = joint === undefined ? '' : (jointNames(resolved).get(joint) ?? joint.name);
    return say('jointAt', { name, at: shortLength(at) });
  }
  if (leg.fittingAfter === null && at === leg.length)
    return tags?.ends?.[leg.leg] ?? say(`endAt-${leg.end.kind === 'fitting' ? 'free' : leg.end.kind}`);
  return fittingWords(leg, speak) ?? say('jointAt', { name: leg.leg, at: shortLength(at) });
}

/** Why, what size, and what is fitted. */
function partsOf(
  { reason, size, given, holds }: JumperPlace,
  say: (key: string, values?: Record<string, string | number>) => string,
): readonly string[] {
  const wanted =
    reason === null
      ? [say('needless')]
      : [
          say(`reason-${reason.replaceAll(' ', '-')}`),
          size === null ? say('sizeAsk') : say('size', { size }),
        ];
  if (given === null) return reason === null ? wanted : [...wanted, say('noneFitted')];
  return [...wanted, say(holds === false && reason !== null ? 'fittedSmall' : 'fitted', { given })];
}

export const jumperCount = (rows: readonly Row[]): number => rows.filter((r) => r.kind === 'jumper').length;

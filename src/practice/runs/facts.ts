/** A run told in full, as rows of facts: what a person sees who walks along it. */
import { jointNames } from '../../drawing/runNames.ts';
import { jumperPlaces } from '../../run/jumpers.ts';
import type { ResolvedLeg, ResolvedRun } from '../../run/resolved.ts';
import type { ResolvedJoint } from '../../run/straight.ts';
import type { RunCable } from '../../run/types.ts';
import { TICKS_PER_INCH, type Ticks, ticks } from '../../trade/length.ts';
import type { Fact, Facts } from '../model.ts';
import { type Bench, metalOf } from './sound.ts';

export const word = (value: string): Fact => ({ kind: 'word', value });
export const length = (of: Ticks): Fact => ({ kind: 'length', ticks: of });
export const number = (value: number, decimals?: number): Fact =>
  decimals === undefined
    ? { kind: 'number', value }
    : { kind: 'number', value, text: value.toFixed(decimals) };
export const rows = (all: readonly Facts[]): Fact => ({ kind: 'rows', rows: all });

const NAMES = { N: 'north', E: 'east', S: 'south', W: 'west', U: 'up', D: 'down' } as const;
/** Direction by its name, or by degrees from north: `deg45`. */
const directionOf = ({ given: { dir } }: ResolvedLeg): string =>
  typeof dir === 'string' ? NAMES[dir] : `deg${dir.azimuthDeg}`;

/** What a leg begins with: `start`, or the part without the channel's name, `elbow-90`. */
const beginsWith = ({ fittingBefore }: ResolvedLeg): string =>
  fittingBefore === null ? 'start' : fittingBefore.item.id.replace(/^card-\d(-\d)?-/, '');

const legRow = (leg: ResolvedLeg): Facts => ({
  leg: word(leg.leg),
  dir: word(directionOf(leg)),
  length: length(leg.length),
  begins: word(beginsWith(leg)),
  takeOut: length(leg.start.takeOut),
  barrier: word(leg.given.barrier === true ? 'yes' : 'no'),
  faces: word(leg.given.bare === false ? 'painted' : 'bare'),
  radius: length(leg.fittingBefore?.item.kind === 'elbow' ? leg.fittingBefore.item.insideRadius : ticks(0)),
});

const jointRow = (leg: ResolvedLeg, joint: ResolvedJoint, name: string, bench: Bench): Facts => ({
  leg: word(leg.leg),
  joint: word(name),
  at: length(joint.at),
  kind: word(joint.kind),
  first: length(joint.insertions[0]),
  second: length(joint.insertions[1]),
  opening: length(joint.opening),
  hole: word(joint.given?.hole ?? 'small'),
  metal: word(metalOf(joint.item, bench) ?? leg.tray.metal),
});

/** Where a cable's way ends, its figures, and how many there are. */
const cableRow = ({ id, type, odIn, lbPerFt, count, use, deviceA, side, to }: RunCable): Facts => ({
  cable: word(id),
  // As an id of a word: `MC interlocked` is `mc-interlocked`.
  type: word(type.toLowerCase().replaceAll(' ', '-')),
  od: number(odIn, 2),
  lb: number(lbPerFt, 2),
  count: number(count),
  use: word(use),
  device: deviceA === undefined ? word('none') : number(deviceA),
  side: word(side ?? 'none'),
  to: word(to),
});

export const isSplice = ({ kind }: ResolvedJoint): boolean => kind === 'socketed' || kind === 'butt';

/** Rows: `legs supports splices parted cables temps marks jumpers ends pieces`. */
export function runFacts(resolved: ResolvedRun, bench: Bench): Facts {
  const { legs, run, start } = resolved;
  const joints = (wanted: (joint: ResolvedJoint) => boolean) =>
    rows(
      legs.flatMap((leg) =>
        leg.joints.filter(wanted).map((joint) => jointRow(leg, joint, names.get(joint) ?? joint.name, bench)),
      ),
    );
  const names = jointNames(resolved);
  const jumpers = jumperPlaces(resolved, bench.catalogue, bench.tables);
  return {
    start: word(start.kind),
    width: number(resolved.tray.width / TICKS_PER_INCH),
    legs: rows(legs.map(legRow)),
    supports: rows(
      legs.flatMap(({ leg, supports }) =>
        supports.map(({ name, at, hold }) => ({
          leg: word(leg),
          support: word(name),
          at: length(at),
          hold: word(hold),
        })),
      ),
    ),
    splices: joints(isSplice),
    parted: joints((joint) => !isSplice(joint)),
    cables: rows((run.cables ?? []).map(cableRow)),
    temps: rows(
      run.temps === undefined
        ? []
        : [{ low: number(run.temps.lowF), high: number(run.temps.highF), now: number(run.temps.nowF) }],
    ),
    marks: rows((run.marks ?? []).map(({ leg, at }) => ({ leg: word(leg), at: length(at) }))),
    jumpers: rows(
      jumpers.flatMap(({ leg, at, given }) =>
        given === null ? [] : [{ leg: word(leg.leg), at: length(at), size: word(given) }],
      ),
    ),
    ends: rows(
      legs.flatMap((leg) =>
        leg.fittingAfter === null
          ? [
              {
                leg: word(leg.leg),
                end: word(leg.givenEnd?.kind ?? 'free'),
                open: length(leg.givenEnd?.open ?? ticks(0)),
              },
            ]
          : [],
      ),
    ),
    pieces: rows(
      legs.flatMap((leg) =>
        leg.pieces.map(({ id, cut }) => ({ piece: word(id), leg: word(leg.leg), cut: length(cut) })),
      ),
    ),
  };
}

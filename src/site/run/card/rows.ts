/** What stands on a job card, gathered and in words: equal things together, nothing left out. */
import type { RunFile } from '../../../run/edit/file.ts';
import type { Finding } from '../../../run/inspect/finding.ts';
import type { ResolvedLeg, ResolvedRun } from '../../../run/resolved.ts';
import type { Takeoff } from '../../../run/takeoff.ts';
import type { Support } from '../../../run/types.ts';
import { fromInches, roundTo, type Ticks } from '../../../trade/length.ts';
import type { Settings } from '../../settings.ts';
import type { Speak, Tell } from '../../speak.ts';
import { type Long, longAs } from '../lengths.ts';
import { findingPlace, jumperPlace } from '../said.ts';

export interface CardWords {
  readonly settings: Settings;
  readonly tell: Tell;
  readonly speak: Speak;
}

export interface FindingRow {
  /** As the figure numbers it. */
  readonly number: number;
  readonly text: string;
  /** Name of the rule and place, where there is no room for the sentence. */
  readonly short: string;
}
export interface CutRow {
  readonly pieces: readonly string[];
  readonly cut: Ticks;
  readonly text: string;
}
/** A splice, or an expansion splice at the start or an end. */
export interface SpliceRow {
  readonly leg: string;
  /** `S1`, `start`, `end`. */
  readonly joint: string;
  readonly name: string;
  readonly at: string;
  readonly opening: string;
}
export interface SupportRow {
  readonly leg: string;
  readonly way: Support['way'];
  readonly title: string;
  readonly supports: readonly { readonly name: string; readonly text: string }[];
}
export interface JumperRow {
  /** The size, at the first of those that have it. */
  readonly title: string;
  readonly text: string;
}

export interface CardRows {
  readonly findings: readonly FindingRow[];
  readonly cuts: readonly CutRow[];
  readonly splices: readonly SpliceRow[];
  readonly supports: readonly SupportRow[];
  readonly jumpers: readonly JumperRow[];
  /** Who builds it; empty rows where nobody is named. */
  readonly crew: readonly string[];
}

export function rowsOf(
  resolved: ResolvedRun,
  takeoff: Takeoff,
  findings: readonly Finding[],
  file: Pick<RunFile, 'run' | 'crew' | 'tags'>,
  { settings, tell, speak }: CardWords,
): CardRows {
  const long = longAs(settings, tell);
  return {
    findings: findings.map((finding, k) => {
      const place = findingPlace(finding, tell, long);
      return {
        number: k + 1,
        text: tell('yourRun.findingAt', { what: speak(finding.say), place }),
        short: tell('yourRun.findingAt', { what: tell(`yourRun.rule-${finding.rule}`), place }),
      };
    }),
    cuts: cutRows(resolved.legs, long),
    splices: spliceRows(resolved, takeoff, tell, long),
    supports: resolved.legs.flatMap((leg) => supportRows(leg, tell, long)),
    jumpers: jumperRows(resolved, takeoff.jumpers, file, tell, long),
    crew: crewOf(file.crew),
  };
}

/** Pieces of one length in one row, in order of travel. */
function cutRows(legs: readonly ResolvedLeg[], long: Long): readonly CutRow[] {
  const byCut = Map.groupBy(
    legs.flatMap((leg) => leg.pieces),
    ({ cut }) => cut,
  );
  return [...byCut].flatMap(([cut, pieces]) =>
    named(pieces.map(({ id }) => id)).map((ids) => ({ cut, text: long(cut), pieces: ids })),
  );
}

/** Most letters of the names in one row. */
const NAMES = 14;

/** Every piece by its name, as many to a row as it has room for. */
function named(ids: readonly string[]): readonly (readonly string[])[] {
  const rows: string[][] = [];
  for (const id of ids) {
    const row = rows.at(-1);
    if (row === undefined || [...row, id].join(', ').length > NAMES) rows.push([id]);
    else row.push(id);
  }
  return rows;
}

/** Every joint of the legs, and the expansion splices at the start and the ends; those open as wide as wanted now. */
function spliceRows(
  { legs, start }: ResolvedRun,
  { gaps }: Takeoff,
  tell: Tell,
  long: Long,
): readonly SpliceRow[] {
  const wanted = (leg: string, at: Ticks): string => {
    const gapIn = gaps.find((gap) => gap.leg === leg && fromInches(gap.atIn) === at)?.gapIn ?? null;
    return gapIn === null ? tell('yourRun.gapBlank') : long(roundTo(fromInches(gapIn), 64));
  };
  const row = (leg: string, joint: string, at: Ticks, opening: string): SpliceRow => ({
    leg,
    joint,
    name: tell('yourRun.spliceOf', { leg, name: joint }),
    at: long(at),
    opening,
  });
  return legs.flatMap(({ leg, parent, length, joints, givenEnd }) => [
    ...(parent === null && start.joint === 'expansion'
      ? [row(leg, tell('yourRun.atStart'), 0 as Ticks, wanted(leg, 0 as Ticks))]
      : []),
    ...joints.map(({ name, at, kind, opening }) => {
      if (kind === 'expansion') return row(leg, name, at, wanted(leg, at));
      return row(leg, name, at, kind === 'hinged' ? tell('yourRun.joint-hinged') : long(opening));
    }),
    ...(givenEnd?.joint === 'expansion'
      ? [row(leg, tell('yourRun.atEnd'), length, wanted(leg, length))]
      : []),
  ]);
}

/** A row for each way that supports of the leg stand; what most of a row do is said once, what another does at itself. */
function supportRows({ leg, supports }: ResolvedLeg, tell: Tell, long: Long): readonly SupportRow[] {
  return [...Map.groupBy(supports, ({ way }) => way)].map(([way, own]) => {
    const [[most, held] = ['guide' as const, []]] = [...Map.groupBy(own, ({ hold }) => hold)].sort(
      ([, a], [, b]) => b.length - a.length,
    );
    const word = tell(`yourRun.hold-${most}`);
    const hold = held.length === own.length ? word : tell('yourRun.holdElse', { hold: word });
    return {
      leg,
      way,
      title: [tell('yourRun.leg', { leg }), tell(`yourRun.way-${way}`), hold].join(', '),
      supports: own.map((one) => ({
        name: one.name,
        text: one.hold === most ? long(one.at) : `${long(one.at)} ${tell(`yourRun.hold-${one.hold}`)}`,
      })),
    };
  });
}

/** Jumpers of one size under that size. */
function jumperRows(
  resolved: ResolvedRun,
  jumpers: Takeoff['jumpers'],
  file: Pick<RunFile, 'run' | 'tags'>,
  tell: Tell,
  long: Long,
): readonly JumperRow[] {
  return [...Map.groupBy(jumpers, ({ size }) => size)].flatMap(([size, own]) =>
    own.map((jumper, k) => ({
      title: k > 0 ? '' : size === null ? tell('yourRun.sizeBlank') : tell('yourRun.copperAt', { size }),
      text: jumperPlace(jumper, resolved, file, tell, long),
    })),
  );
}

function crewOf(crew: string): readonly string[] {
  const people = crew.split(/[,;]/).flatMap((one) => (one.trim() === '' ? [] : [one.trim()]));
  return people.length === 0 ? ['', ''] : people;
}

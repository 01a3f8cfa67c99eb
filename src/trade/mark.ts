/**
 * Whether a cutting mark is clear of the holes of a tray, and the nearest places to either side that are. Half of an
 * odd hole width is half a tick, so everything is counted in half ticks and stays a whole number.
 */
import type { Answered, Source, Step } from './answer.ts';
import { HOLE_CLEARANCE, HOLES } from './habits.ts';
import { formatLength, inches, nearest, type Ticks, ticks } from './length.ts';
import { TICKS_PER_INCH } from './units.ts';

export interface MarkGiven {
  /** The mark, from the end that the holes are measured from; from 0. */
  readonly at: Ticks;
  /** Centre of the first hole, from the same end; from 0. */
  readonly firstHole: Ticks;
  /** Centre to centre, above 0. */
  readonly pitch: Ticks;
  /** Above 0. */
  readonly holeWidth: Ticks;
  /** Clear metal between mark and hole edge, from 0; one hole width when left out. */
  readonly clearance?: Ticks | undefined;
}

export interface MarkResult {
  readonly clear: boolean;
  /** Nearest clear place towards the end, `at` itself when it is clear, null when there is none. */
  readonly shorterIn: number | null;
  /** Nearest clear place away from the end, `at` itself when it is clear, null when there is none. */
  readonly longerIn: number | null;
}

/** A stretch where no mark may stand, in half ticks; its edges are clear. `to` is null when it never ends. */
interface Blocked {
  readonly from: number;
  readonly to: number | null;
  /** Number of the hole, from 1; null when holes stand so close that their stretches run into one. */
  readonly hole: number | null;
}

export function mark(given: MarkGiven): Answered<MarkResult> {
  const blocked = blockedAround(given);
  if (blocked === null) {
    const at = inches(given.at);
    return {
      result: { clear: true, shorterIn: at, longerIn: at },
      steps: [
        ...kept(given),
        { say: 'mark.clear', values: { at: formatLength(given.at, 64) }, value: at, unit: 'in' },
      ],
      sources: sources(given),
    };
  }
  const shorter = blocked.from >= 0 ? blocked.from : null;
  const result = {
    clear: false,
    shorterIn: shorter === null ? null : inchesOf(shorter),
    longerIn: blocked.to === null ? null : inchesOf(blocked.to),
  };
  return {
    result,
    steps: [
      ...kept(given),
      hit(given, blocked),
      ...place('shorter', shorter, given),
      ...place('longer', blocked.to, given),
      ...(shorter === null && blocked.to === null ? [{ say: 'mark.none' }] : [{ say: 'mark.move' }]),
    ],
    sources: sources(given),
  };
}

/** The blocked stretch that the mark stands in, or null. */
function blockedAround({
  at,
  firstHole,
  pitch,
  holeWidth,
  clearance = holeWidth,
}: MarkGiven): Blocked | null {
  const reach = holeWidth + 2 * clearance;
  const [mark, first, step] = [2 * at, 2 * firstHole, 2 * pitch];
  if (mark <= read(first - reach)) return null;
  if (reach > pitch) return { from: first - reach, to: null, hole: null };
  const past = mark - first;
  const before = Math.max(0, Math.floor(past / step));
  for (const k of [before, before + 1]) {
    const centre = first + k * step;
    const [from, to] = [centre - reach, centre + reach];
    if (mark > read(from) && mark < read(to)) return { from, to, hole: k + 1 };
  }
  return null;
}

/**
 * An edge between two ticks as it is read when it is given back: at the nearest tick, halves away from zero. So a
 * place that was offered is clear when it comes as a mark.
 */
function read(half: number): number {
  return 2 * nearest(half / 2);
}

function kept({ holeWidth, clearance = holeWidth }: MarkGiven): Step[] {
  const reach = holeWidth + 2 * clearance;
  return [
    {
      say: 'mark.reach',
      values: { width: formatLength(holeWidth, 64), clearance: formatLength(clearance, 64) },
      value: inchesOf(reach),
      unit: 'in',
    },
  ];
}

function hit({ at, firstHole, pitch }: MarkGiven, { from, to, hole }: Blocked): Step {
  const mark = formatLength(at, 64);
  if (hole === null || to === null)
    return { say: 'mark.endless', values: { at: mark, from: textOf(Math.max(0, from)) } };
  const centre = formatLength(ticks(firstHole + (hole - 1) * pitch), 64);
  return {
    say: 'mark.blocked',
    values: { at: mark, hole, centre, from: textOf(Math.max(0, from)), to: textOf(to) },
  };
}

function place(side: 'shorter' | 'longer', half: number | null, given: MarkGiven): Step[] {
  if (half === null) return [{ say: side === 'shorter' ? 'mark.noShorter' : 'mark.noLonger' }];
  const values = { place: textOf(half), move: textOf(Math.abs(half - 2 * given.at)) };
  const found = {
    say: side === 'shorter' ? 'mark.shorter' : 'mark.longer',
    values,
    value: inchesOf(half),
    unit: 'in',
  };
  const tape = onTape(side, half, given);
  return tape === null ? [found] : [found, { say: 'mark.tape', values: { tape: formatLength(tape) } }];
}

/**
 * The place in whole sixteenths, for a tape that shows no finer: away from the hole, since the nearest sixteenth may
 * be inside. Null when the place itself is one, or when that sixteenth is too near the next hole.
 */
function onTape(side: 'shorter' | 'longer', half: number, given: MarkGiven): Ticks | null {
  const grain = (2 * TICKS_PER_INCH) / 16;
  if (half % grain === 0) return null;
  const whole = side === 'shorter' ? Math.floor(half / grain) : Math.ceil(half / grain);
  const at = ticks((whole * grain) / 2);
  return blockedAround({ ...given, at }) === null ? at : null;
}

function sources({ clearance }: MarkGiven): readonly Source[] {
  return clearance === undefined ? [HOLES, HOLE_CLEARANCE] : [HOLES];
}

function inchesOf(half: number): number {
  return half / 2 / TICKS_PER_INCH;
}

/** To 1/64 in, since a place rounded to 1/16 may be inside what is blocked. */
function textOf(half: number): string {
  return formatLength(ticks(nearest(half / 2)), 64);
}

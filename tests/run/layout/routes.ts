/**
 * Small routes by chance, and their lines worked out from the words of the run's specification alone, in inches: take-outs
 * and insertions of the practice catalogue (training values), faces, channel ends, span limits. No code of src is used.
 */
import { Chance } from '../randomRun.ts';

/** One line, in inches from its leg's first working point. */
export interface PlainLine {
  readonly leg: string;
  /** Where a support may stand: whole inches on it, or the places. */
  readonly face: readonly [number, number];
  readonly channel: readonly [number, number];
  readonly places: readonly number[] | null;
  readonly maxSpan: number;
}

export interface PlainRoute {
  readonly run: Record<string, unknown>;
  readonly lines: readonly PlainLine[];
  readonly stock: number;
  readonly kerf: number;
}

/** Take-outs of 4 in practice fittings; insertion 1 1/2 in all. */
const FITTINGS = [
  { id: 'card-4-elbow-90', takeOut: 7, turn: 90 },
  { id: 'card-4-elbow-45', takeOut: 4, turn: 45 },
  { id: 'card-4-tee', takeOut: 9, turn: 90 },
] as const;
const INSERTION = 1.5;
const HINGE = 3;

const at16 = (chance: Chance, from: number, to: number): number => chance.whole(from * 16, to * 16) / 16;

export interface Wanted {
  /** Legs at most, and length of the whole at most. */
  readonly legs: number;
  readonly inches: number;
  /** Share of legs that have places. */
  readonly places: number;
  readonly parted: number;
  /** How full the stock lengths are at least, were there no waste; left out: as chance has it. */
  readonly full?: number;
  readonly stocks: readonly number[];
  readonly spans: readonly number[];
}

export function randomRoute(seed: number, wanted: Wanted): PlainRoute {
  const chance = new Chance(seed);
  const stock = chance.of(wanted.stocks);
  const kerf = chance.of([0, 1 / 8, 1 / 8, 1 / 16]);
  const maxSpan = chance.of(wanted.spans) + chance.of([0, 0, 0.25, 0.4375]);
  const count = chance.whole(1, wanted.legs);
  const joint = chance.of(['socketed', 'butt', 'free'] as const);
  const whole = at16(chance, 30 * count, wanted.inches);

  /** A last length that makes the channel nearly whole stock lengths. */
  const filled = (by: Chance, channel: number, about: number) => {
    const full = (wanted.full ?? 0) + (1 - (wanted.full ?? 0)) * by.next();
    const sticks = Math.ceil((channel + about) / stock) + by.of([0, 0, 1]);
    return Math.max(30, Math.round(16 * (sticks * stock * full - channel)) / 16);
  };

  const legs: Record<string, unknown>[] = [];
  const joints: Record<string, unknown>[] = [];
  const places: Record<string, unknown>[] = [];
  const lines: PlainLine[] = [];
  let azimuthDeg = 90;
  let before: (typeof FITTINGS)[number] | null = null;
  for (let k = 0; k < count; k++) {
    const behind = k === count - 1 ? null : chance.of(FITTINGS);
    const share = Math.max(30, Math.round((whole * 16) / count) / 16);
    const any =
      wanted.full !== undefined
        ? at16(chance, Math.max(30, Math.floor(0.4 * stock)), Math.floor(0.8 * stock))
        : count === 1
          ? whole
          : at16(chance, 30, Math.max(31, Math.floor(2 * share - 30)));
    const channel = lines.reduce((sum, line) => sum + line.channel[1] - line.channel[0], 0);
    const length = behind === null && wanted.full !== undefined ? filled(chance, channel, any) : any;
    const id = `L${k + 1}`;
    const side = before?.id === 'card-4-tee' ? ':right' : '';
    legs.push({
      id,
      from: k === 0 ? 'start' : `L${k}${side}`,
      fitting: before?.id ?? null,
      dir: { azimuthDeg, slopeDeg: 0 },
      length,
    });
    const own = chance.yes(wanted.places)
      ? [
          ...new Set(
            Array.from({ length: 4 + Math.ceil(length / 16) }, () => at16(chance, 0, Math.floor(length))),
          ),
        ].sort((a, b) => a - b)
      : null;
    if (own !== null) places.push({ leg: id, at: own });

    // Faces and channel ends of the leg, then of each part of it.
    let face = before === null ? 0 : before.takeOut;
    let begin = before === null ? (joint === 'socketed' ? -INSERTION : 0) : before.takeOut - INSERTION;
    const add = (to: number, end: number) => {
      lines.push({ leg: id, face: [face, to], channel: [begin, end], places: own, maxSpan });
    };
    if (length > 80 && chance.yes(wanted.parted)) {
      const middle = at16(chance, 35, Math.floor(length) - 35);
      const kind = chance.of(['hinged', 'expansion', 'gap'] as const);
      const gap = kind === 'hinged' ? 0 : at16(chance, 1, 2);
      joints.push({ leg: id, at: middle, kind, ...(kind === 'hinged' ? {} : { gap }) });
      const half = kind === 'hinged' ? HINGE : gap / 2;
      const goes = kind === 'hinged' ? INSERTION : 0;
      add(middle - half, middle - half + goes);
      face = middle + half;
      begin = middle + half - goes;
    }
    if (behind === null) add(length, length);
    else add(length - behind.takeOut, length - behind.takeOut + INSERTION);
    azimuthDeg = (azimuthDeg + (behind?.turn ?? 0)) % 360;
    before = behind;
  }
  const run = {
    v: 1,
    tray: 'card-4',
    stock,
    kerf,
    start: { kind: joint === 'free' ? 'free' : 'tray', joint },
    legs,
    joints,
    ...(places.length > 0 ? { places } : {}),
    limits: { maxSpan },
  };
  // The load table of the practice channel carries its own weight over 10 ft and no farther.
  return { run, lines: lines.map((line) => ({ ...line, maxSpan: Math.min(maxSpan, 120) })), stock, kerf };
}

/** Accept, recut, scrap (T06): three pieces cut to one length, held against the tolerance of the joint that they go to. */
import { fromInches, inches, type Ticks, ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import { type Drawn, model, type Slip } from '../../model.ts';

const wants = {
  joint: ['socket', 'butt'],
  wanted: 'length',
  one: 'length',
  two: 'length',
  three: 'length',
} as const;
type Joint = 'socket' | 'butt';
type Verdict = 'accept' | 'recut' | 'scrap';

/** How far a piece may be out, in inches (common practice, no source). */
const LIMITS: Readonly<Record<Joint, { readonly short: number; readonly long: number }>> = {
  socket: { short: 1 / 8, long: 0 },
  butt: { short: 1 / 16, long: 1 / 16 },
};
/** The drawn lengths run from nothing to twice this; so far out is a piece at most, either way. */
const MOST = fromInches(1 / 4);

/** @param out  inches above what was wanted */
export function verdictOn(joint: Joint, out: number): Verdict {
  const { short, long } = LIMITS[joint];
  if (out > long) return 'recut';
  return out < -short ? 'scrap' : 'accept';
}

interface Plan {
  readonly joint: Joint;
  readonly wanted: Ticks;
  readonly measured: readonly Ticks[];
  readonly verdicts: readonly Verdict[];
}

const PIECES: readonly (string | undefined)[] = ['first', 'second', 'third'];

function plan({ joint, wanted, one, two, three }: Drawn<typeof wants>): Plan | null {
  const measured = [one, two, three].map((drawn) => ticks(wanted + drawn - MOST));
  const verdicts = measured.map((length) => verdictOn(joint, inches(ticks(length - wanted))));
  // Three alike would be one question asked three times.
  return new Set(verdicts).size < 2 ? null : { joint, wanted, measured, verdicts };
}

/** What someone says of a piece who judges it in this way; null: what is right, or what another habit explains. */
type Habit = (joint: Joint, out: number, right: Verdict) => Verdict | null;

/** The short side of the tolerance is read to both sides. */
const bothWays: Habit = (joint, out, right) =>
  joint === 'socket' && right === 'recut' && out <= LIMITS.socket.short ? 'accept' : null;

const otherJoint: Habit = (joint, out, right) => {
  const taken = verdictOn(joint === 'socket' ? 'butt' : 'socket', out);
  return taken === right || bothWays(joint, out, right) !== null ? null : taken;
};
const shortAsRecut: Habit = (_, __, right) => (right === 'scrap' ? 'recut' : null);
const longAsScrap: Habit = (_, __, right) => (right === 'recut' ? 'scrap' : null);
/** Only whole inches are looked at. */
const wholeInches: Habit = (joint, out, right) =>
  right === 'accept' || [bothWays, otherJoint].some((habit) => habit(joint, out, right) === 'accept')
    ? null
    : 'accept';
/** What a piece that holds is made of all the same, unless the other joint's tolerance explains it. */
const though =
  (made: 'recut' | 'scrap', where: (out: number) => boolean): Habit =>
  (joint, out, right) =>
    right === 'accept' && where(out) && otherJoint(joint, out, right) !== made ? made : null;
/** Every piece that is short at all is thrown away. */
const anyShort = though('scrap', (out) => out < 0);
const soundScrapped = though('scrap', (out) => out >= 0);
/** Cut once more although it holds. */
const soundRecut = though('recut', () => true);

/** On the piece that the mistake names, and only on one that is not misjudged already: a piece is judged once. */
const on =
  (habit: Habit): Slip<Plan> =>
  (taken, _, { piece }) => {
    const at = PIECES.indexOf(piece);
    const { joint, wanted, measured, verdicts } = taken;
    const [length, right] = [measured[at], verdicts[at]];
    if (length === undefined || right === undefined) return null;
    const out = inches(ticks(length - wanted));
    if (verdictOn(joint, out) !== right) return null;
    const wrong = habit(joint, out, right);
    return wrong === null ? null : { ...taken, verdicts: verdicts.with(at, wrong) };
  };

const SAID: Readonly<Record<Verdict, string>> = { accept: 'Accept', recut: 'Recut', scrap: 'Scrap' };

const ask = (at: 0 | 1 | 2) =>
  ({
    kind: 'choice',
    answer: ({ verdicts }: Plan) => verdicts[at] as Verdict,
    steps: ({ joint, wanted, measured, verdicts }: Plan) => {
      const out = ticks((measured[at] as Ticks) - wanted);
      const key = out === 0 ? 'asWanted' : out > 0 ? 'pieceLong' : 'pieceShort';
      const values = { number: at + 1, out: shortLength(ticks(Math.abs(out))) };
      const limit = shortLength(fromInches(LIMITS[joint].short));
      return [
        { say: `cutting.${key}`, values },
        { say: `cutting.${joint}${SAID[verdicts[at] as Verdict]}`, values: { limit } },
      ];
    },
  }) as const;

export const acceptRecutScrap = model<typeof wants, Plan>({
  wants,
  plan,
  facts: ({ joint, wanted, measured }) => ({
    joint: { kind: 'word', value: joint },
    wanted: { kind: 'length', ticks: wanted },
    socketShort: { kind: 'length', ticks: fromInches(LIMITS.socket.short) },
    buttOut: { kind: 'length', ticks: fromInches(LIMITS.butt.short) },
    one: { kind: 'length', ticks: measured[0] as Ticks },
    two: { kind: 'length', ticks: measured[1] as Ticks },
    three: { kind: 'length', ticks: measured[2] as Ticks },
  }),
  asks: { first: ask(0), second: ask(1), third: ask(2) },
  slips: {
    bothWays: on(bothWays),
    otherJoint: on(otherJoint),
    shortAsRecut: on(shortAsRecut),
    longAsScrap: on(longAsScrap),
    wholeInches: on(wholeInches),
    anyShort: on(anyShort),
    soundScrapped: on(soundScrapped),
    soundRecut: on(soundRecut),
  },
  figures: () => [],
  figured: () => [],
  says: [
    ...['asWanted', 'pieceLong', 'pieceShort'],
    ...['socket', 'butt'].flatMap((joint) => Object.values(SAID).map((one) => `${joint}${one}`)),
  ].map((key) => `cutting.${key}`),
});

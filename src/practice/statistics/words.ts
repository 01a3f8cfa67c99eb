/** Tallies in words. Small numbers are said plainly: n and interval, never a share alone. */
import type { Say } from '../../trade/answer.ts';
import { outOf100, saysOfDecision, saysOfHeld } from '../passRule/words.ts';
import type { SheetTally } from './common.ts';
import type { Figure, Why } from './figure.ts';
import type { Agreement } from './kappa.ts';
import type { PoolResult } from './pooled.ts';
import { FEW, type Share } from './share.ts';
import type { AskTally } from './tally.ts';

const whys: Readonly<Record<Why, string>> = {
  'no spread': 'tally.noSpread',
  'one class only': 'tally.oneClass',
  'too few': 'tally.tooFew',
};
const key = {
  nobody: 'tally.nobody',
  few: 'tally.few',
  fewOne: 'tally.fewOne',
  share: 'tally.share',
  mistake: 'tally.mistake',
  near: 'tally.near',
  unknown: 'tally.unknown',
  blank: 'tally.blank',
  whole: 'tally.whole',
  fewPeople: 'tally.fewPeople',
  onePerson: 'tally.onePerson',
  agreesHint: 'tally.agreesHint',
  agrees: 'tally.agrees',
  agreesNot: 'tally.agreesNot',
  kr20: 'tally.kr20',
  error: 'tally.error',
  poolFew: 'tally.poolFew',
  alike: 'tally.alike',
  kappa: 'tally.kappa',
} as const;

export const tallySays: readonly string[] = [...Object.values(key), ...Object.values(whys)];

/** To two places; none is −0. */
const twoPlaces = (value: number): string => (Math.abs(value) < 0.005 ? '0.00' : value.toFixed(2));

/** The figure in its sentence, or why there is none. */
function figureSays(figure: Figure, say: string): Say {
  if ('none' in figure) return { say: whys[figure.none] };
  return { say, values: { value: twoPlaces(figure.value) } };
}

export function saysOfShare({ n, held, interval, few }: Share): Say {
  if (n === 0) return { say: key.nobody };
  const values = { n, held, low: outOf100(interval.low), high: outOf100(interval.high) };
  return few
    ? { say: held === 1 ? key.fewOne : key.few, values }
    : { say: key.share, values: { ...values, share: outOf100(held / n) } };
}

/** What went wrong on an ask, the most frequent mistake first. */
export function saysOfMistakes({ share: { n }, mistakes, near, unknown, blank }: AskTally): readonly Say[] {
  const counts = [
    [key.near, near],
    [key.unknown, unknown],
    [key.blank, blank],
  ] as const;
  return [
    ...mistakes.map(({ made, of, says }) => ({ say: key.mistake, values: { made, of, says } })),
    ...counts.flatMap(([say, count]) => (count === 0 ? [] : [{ say, values: { count, n } }])),
  ];
}

/** A sheet that was answered whole: by how many, and how far its draws agree. */
export function saysOfSheet({ people, partly, kr20, error }: SheetTally): readonly Say[] {
  return [
    { say: key.whole, values: { people, partly } },
    ...(people < FEW
      ? [{ say: people === 1 ? key.onePerson : key.fewPeople, values: { people, few: FEW } }]
      : []),
    figureSays(kr20, key.kr20),
    ...('none' in error ? [] : [figureSays(error, key.error), { say: key.agreesHint }]),
  ];
}

/** Whether those who hold one draw of a sheet hold more of the rest: without the draw itself, then with it. */
export function saysOfItem({
  pointBiserial,
  pointBiserialWithout,
}: SheetTally['items'][number]): readonly Say[] {
  if ('none' in pointBiserialWithout) return [{ say: whys[pointBiserialWithout.none] }];
  if ('none' in pointBiserial) return [{ say: whys[pointBiserial.none] }];
  const values = { value: twoPlaces(pointBiserialWithout.value), itself: twoPlaces(pointBiserial.value) };
  return [{ say: key.agrees, values }, ...(pointBiserialWithout.value < 0 ? [{ say: key.agreesNot }] : [])];
}

/** Several sheets of one person; the sheets themselves are named beside it. */
export function saysOfPooled(result: PoolResult): readonly Say[] {
  return 'decision' in result ? saysOfDecision(result.decision) : [{ say: key.poolFew }, saysOfHeld(result)];
}

/** Two trainers. */
export function saysOfAgreement({ n, agreed, kappa }: Agreement): readonly Say[] {
  return [{ say: key.alike, values: { agreed, n } }, figureSays(kappa, key.kappa)];
}

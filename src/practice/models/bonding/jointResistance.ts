/**
 * Joint resistance (T07, T11): a reading without its leads, held against the project's value. 0.00033 ohm is a figure of
 * the laboratory, NEMA VE 1 (from memory): it is no limit of a site.
 */
import { figure } from '../../../trade/figure.ts';
import { type Drawn, model } from '../../model.ts';
import { choiceAsk, num, numberAsk, word } from '../parts/asks.ts';

const wants = {
  joint: ['splice', 'jumper', 'ladder', 'stand'],
  across: 'whole',
  leads: 'whole',
  limit: 'whole',
  stated: ['stated', 'missing'],
} as const;
export const LABORATORY_OHM = 0.000_33;
/** Readings are drawn in hundredths of a milliohm. */
const STEP_OHM = 0.000_01;

type Verdict = 'accept' | 'rework' | 'ask';

interface Plan {
  readonly joint: string;
  readonly stated: boolean;
  readonly limitOhm: number;
  /** Through the leads and the joint, and through the leads alone. */
  readonly readingOhm: number;
  readonly leadsOhm: number;
  /** As the person takes it. */
  readonly leads: -1 | 0 | 1;
  readonly milli: number;
  readonly against: 'project' | 'laboratory';
  readonly said: Verdict | null;
}

/** A milliohm is a thousandth; `milli` is what it is taken for. */
const joint = ({ readingOhm, leadsOhm, leads, milli }: Plan) =>
  (readingOhm + leads * leadsOhm) * (milli / 0.001);

function verdict(one: Plan, ohm = joint(one)): Verdict {
  if (one.said !== null) return one.said;
  if (one.against === 'laboratory') return ohm <= LABORATORY_OHM ? 'accept' : 'rework';
  return one.stated ? (ohm <= one.limitOhm ? 'accept' : 'rework') : 'ask';
}

function plan({ joint: where, across, leads, limit, stated }: Drawn<typeof wants>): Plan | null {
  const made: Plan = {
    joint: where,
    stated: stated === 'stated',
    limitOhm: limit * 5 * STEP_OHM,
    readingOhm: (across + leads) * STEP_OHM,
    leadsOhm: leads * STEP_OHM,
    leads: -1,
    milli: 0.001,
    against: 'project',
    said: null,
  };
  const close = [made.limitOhm, LABORATORY_OHM].some((ohm) => Math.abs(joint(made) - ohm) < 3 * STEP_OHM);
  return close ? null : made;
}

const milliohm = (ohm: number) => num(Math.round(ohm * 1e5) / 100, 2);

export const jointResistance = model<typeof wants, Plan>({
  wants,
  plan,
  facts: (one) => ({
    joint: word(one.joint),
    stated: word(one.stated ? 'stated' : 'missing'),
    limit: num(one.limitOhm, 5),
    reading: milliohm(one.readingOhm),
    leads: milliohm(one.leadsOhm),
    laboratory: num(LABORATORY_OHM, 5),
  }),
  asks: {
    joint: numberAsk(joint, (one) => [
      {
        say: 'bonding.joint',
        values: {
          reading: figure(one.readingOhm * 1000, 2),
          leads: figure(one.leadsOhm * 1000, 2),
          milli: figure(joint(one) * 1000, 2),
          ohm: figure(joint(one), 5),
        },
      },
    ]),
    verdict: choiceAsk(
      (one) => verdict(one),
      (one) => [
        one.stated
          ? {
              say: 'bonding.againstProject',
              values: { ohm: figure(joint(one), 5), limit: figure(one.limitOhm, 5) },
            }
          : { say: 'bonding.noProject' },
      ],
      { asks: ['joint'], answer: (one, _, { joint: ohm }) => verdict(one, ohm as number) },
    ),
  },
  slips: {
    leadsLeftIn: (one) => ({ ...one, leads: 0 }),
    leadsAdded: (one) => ({ ...one, leads: 1 }),
    hundredth: (one) => ({ ...one, milli: 0.01 }),
    tenThousandth: (one) => ({ ...one, milli: 0.0001 }),
    laboratory: (one) => ({ ...one, against: 'laboratory' }),
    passedThough: (one) =>
      verdict(one) === 'rework' && verdict({ ...one, against: 'laboratory' }) === 'rework'
        ? { ...one, said: 'accept' }
        : null,
    askedThough: (one) => (one.stated ? { ...one, said: 'ask' } : null),
  },
  figures: () => [],
  figured: () => [],
  says: ['bonding.joint', 'bonding.againstProject', 'bonding.noProject'],
});

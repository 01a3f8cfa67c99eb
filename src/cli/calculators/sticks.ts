/** Which sticks to cut which pieces from. */
import { sticksInput } from '../../schema/sticksInputs.ts';
import { GivenError } from '../../trade/given.ts';
import { sticks as plan } from '../../trade/sticks/sticks.ts';
import type { Options } from '../answering.ts';
import { type Calculator, reading } from '../calculator.ts';
import { PLAN_SECONDS, untilLate } from '../untilLate.ts';

const MOST_SECONDS = 3600;

export const sticks: readonly Calculator[] = [
  {
    name: 'sticks',
    line: 'which sticks to cut which pieces from, with the proof that fewer do not do',
    fields: sticksInput,
    results: [
      ['feasible', 'whether there is stock enough; false: why says what is known'],
      ['lengthsUsed, newStockIn', 'new stock lengths opened, and their length'],
      ['lowerBoundIn', 'no plan takes less new stock'],
      ['proven, provenLevels', 'whether that is met; how many of the five aims are proven, in their order'],
      ['cutFromOffcutsIn', 'pieces taken from off-cuts, together'],
      ['longestReusableIn', 'longest remainder of a bar cut, from minReusable; else 0'],
      ['setups, stopSettings', 'different ways of cutting a bar, and the different lengths in each'],
      ['lengths', 'every bar: fromIn, offcut, pieces of in and mark, leftIn'],
      ['certificate', 'whole weights that prove the first aim; null when it is not proven'],
      ['why', 'why there is no plan, or what was rounded'],
    ],
    options: { seconds: { value: 'N', line: `how long to look for each job at most (${PLAN_SECONDS})` } },
    work: (options) => {
      const seconds = secondsOf(options);
      return reading(sticksInput, (given) => plan(given, untilLate(seconds)));
    },
  },
];

/** @throws {GivenError} when it is no number of seconds */
function secondsOf(options: Options): number {
  const text = options.text('seconds');
  if (text === undefined) return PLAN_SECONDS;
  const seconds = Number(text);
  if (/^\d+(?:\.\d+)?$/.test(text) && seconds <= MOST_SECONDS) return seconds;
  throw new GivenError([
    {
      field: '--seconds',
      value: text,
      message: 'this is no number of seconds',
      todo: `write a number from 0 to ${MOST_SECONDS}`,
    },
  ]);
}

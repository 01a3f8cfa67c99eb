/** Which sticks to cut which pieces from. The clock is here, and nowhere below. */
import { sticksInput } from '../../schema/sticksInputs.ts';
import { GivenError } from '../../trade/given.ts';
import { sticks as plan } from '../../trade/sticks/sticks.ts';
import { type Calculator, calculator, type Options } from '../calculator.ts';

const SECONDS = 2;
const MOST_SECONDS = 3600;

export const sticks: readonly Calculator[] = [
  {
    ...calculator(
      'sticks',
      'which sticks to cut which pieces from, with the proof that fewer do not do',
      sticksInput,
      (given, _content, options) => {
        const end = performance.now() + 1000 * secondsOf(options);
        return plan(given, { stop: () => performance.now() >= end });
      },
      [
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
      { seconds: { value: 'N', line: `how long to look for each job at most (${SECONDS})` } },
    ),
    ready: (options) => {
      secondsOf(options);
    },
  },
];

/** @throws {GivenError} when it is no number of seconds */
function secondsOf(options: Options): number {
  const text = options.text('seconds');
  if (text === undefined) return SECONDS;
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

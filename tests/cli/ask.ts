/** A calculator of the command called as its verb calls it, without options and without starting a process. */
import { answerOf } from '../../src/cli/answering.ts';
import { CALCULATORS } from '../../src/cli/calc.ts';
import type { CalcContent } from '../../src/cli/calcContent.ts';
import type { Envelope } from '../../src/cli/envelope.ts';

export function askCalculator(verb: string, given: unknown, content: CalcContent): Envelope {
  const found = CALCULATORS.find(({ name }) => name === verb);
  if (found === undefined) throw new Error(`no calculator ${verb}`);
  const work = found.work({ text: () => undefined, has: () => false });
  return answerOf(() => work(given, content), content.speak);
}

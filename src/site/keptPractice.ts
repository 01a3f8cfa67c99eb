/** What the sheet of kept tries says of them, and how a file of them is read. Pure. */
import { type Attempt, firstTries } from '../practice/attempts.ts';
import { GENERATOR } from '../practice/generator.ts';
import { GivenError } from '../trade/given.ts';
import { dayText } from './dates.ts';
import type { Tell } from './speak.ts';
import { type Attempt as Tried, tried } from './tried.ts';

/**
 * The tries in sentences.
 * @param families  ids of those that can be drawn today
 * @param steady    whether the browser keeps them; `undefined` where it does not say
 * @param dayOf     the day, `YYYY-MM-DD`, on which a moment falls here
 */
export function keptSays(
  attempts: readonly Attempt[],
  families: readonly string[],
  steady: boolean | undefined,
  dayOf: (moment: number) => string,
  tell: Tell,
): readonly string[] {
  const [first] = attempts;
  if (first === undefined) return [tell('keptPractice.none')];
  const gone = attempts.filter(
    ({ family, generator }) => generator !== GENERATOR || !families.includes(family),
  );
  const names = (of: readonly Attempt[]) => [...new Set(of.map(({ family }) => family))];
  return [
    attempts.length === 1
      ? tell('keptPractice.countOne')
      : tell('keptPractice.count', {
          tries: attempts.length,
          draws: firstTries(attempts).length,
          families: names(attempts).length,
        }),
    tell('keptPractice.first', { day: dayText(tell, dayOf(Date.parse(first.at))) }),
    ...(gone.length === 0
      ? []
      : [tell('keptPractice.gone', { count: gone.length, families: names(gone).join(', ') })]),
    tell(steady === true ? 'keptPractice.steady' : 'keptPractice.loose'),
  ];
}

/** What came in with a file: how many tries were not here, and how many stayed out because they are none. */
export function cameSays(count: number, left: number, tell: Tell): string {
  const came =
    count > 1
      ? tell('keptPractice.came', { count })
      : tell(count === 0 ? 'keptPractice.came0' : 'keptPractice.came1');
  return left === 0 ? came : `${came} ${tell('keptPractice.left', { count: left })}`;
}

/** A file that somebody gave, read: `undefined` is one that is too large to be one of ours. */
export const inHand = <T>(text: string | undefined, read: (given: unknown) => T, tell: Tell): Tried<T> =>
  tried(() => {
    const refuse = (message: 'tooLarge' | 'noJson', todo: 'giveOther' | 'giveSaved') =>
      new GivenError([
        { field: '', message: tell(`keptPractice.${message}`), todo: tell(`keptPractice.${todo}`) },
      ]);
    if (text === undefined) throw refuse('tooLarge', 'giveOther');
    let given: unknown;
    try {
      given = JSON.parse(text);
    } catch {
      throw refuse('noJson', 'giveSaved');
    }
    return read(given);
  });

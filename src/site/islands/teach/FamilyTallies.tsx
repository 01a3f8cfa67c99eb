import { useMemo } from 'react';
import { tallies } from '../../../practice/statistics/tally.ts';
import { saysOfMistakes, saysOfShare } from '../../../practice/statistics/words.ts';
import { question } from '../../practice.ts';
import type { Speak, Tell } from '../../speak.ts';
import type { Graded } from './useTries.ts';

interface Props {
  readonly graded: Graded;
  readonly numbers: Readonly<Record<string, string>>;
  readonly lang: string;
  readonly speak: Speak;
  readonly tell: Tell;
}

/** Families in the order of the practice list: how many hold, and the mistakes counted. Open where there are any. */
export function FamilyTallies({ graded, numbers, lang, speak, tell }: Props) {
  const { tried, practice } = graded;
  const found = useMemo(() => {
    const order = Object.keys(numbers);
    return tallies(tried).toSorted((a, b) => order.indexOf(a.family) - order.indexOf(b.family));
  }, [tried, numbers]);
  if (found.length === 0) return null;
  return (
    <section>
      <h2 className="view-title">{tell('answersPage.families')}</h2>
      <p className="note">{tell('answersPage.familiesHint')}</p>
      {found.map(({ family, people, share, asks }) => (
        <details className="opens" key={family} open={asks.some(({ mistakes }) => mistakes.length > 0)}>
          <summary>
            <span>
              <span className="label">{numbers[family]}</span>{' '}
              {practice.families.get(family)?.title[lang] ?? family}
            </span>
            <b>
              {tell(share.held === 1 ? 'answersPage.holdsOne' : 'answersPage.holds', {
                held: share.held,
                n: share.n,
              })}
            </b>
          </summary>
          <div>
            <p>
              {speak(saysOfShare(share))} {tell('answersPage.people', { people })}
            </p>
            {asks.map((ask) => (
              <div className="tally-ask" key={ask.ask}>
                <h3>{question(ask)}</h3>
                <p>
                  {tell(ask.share.held === 1 ? 'answersPage.holdsOne' : 'answersPage.holds', {
                    held: ask.share.held,
                    n: ask.share.n,
                  })}
                </p>
                <ul className="tally-lines">
                  {saysOfMistakes(ask).map((say) => (
                    <li key={`${say.say} ${say.values?.['says']}`}>{speak(say)}</li>
                  ))}
                </ul>
              </div>
            ))}
          </div>
        </details>
      ))}
    </section>
  );
}

import { useMemo } from 'react';
import { sheetTallies } from '../../../practice/statistics/common.ts';
import { saysOfItem, saysOfShare, saysOfSheet } from '../../../practice/statistics/words.ts';
import { sheetName } from '../../sheetName.ts';
import type { Speak, Tell } from '../../speak.ts';
import type { Graded } from './useTries.ts';

interface Props {
  readonly graded: Graded;
  readonly lang: string;
  readonly speak: Speak;
  readonly tell: Tell;
}

/** Sheets that were answered: what their draws say of each other, from those who answered every one of them. */
export function SheetTallies({ graded, lang, speak, tell }: Props) {
  const found = useMemo(() => sheetTallies(graded), [graded]);
  if (found.length === 0) return null;
  return (
    <section>
      <h2 className="view-title">{tell('answersPage.sheets')}</h2>
      {found.map((tally) => (
        <details className="opens" key={`${tally.sheet.number} ${tally.sheet.id}`}>
          <summary>
            <span>{sheetName(tally.sheet.number, tally.sheet.title[lang] ?? tally.sheet.id, tell)}</span>
            <b>{tell('answersPage.whole', { people: tally.people })}</b>
          </summary>
          <div>
            {saysOfSheet(tally).map((say) => (
              <p key={say.say}>{speak(say)}</p>
            ))}
            {tally.people > 0 &&
              tally.items.map((item) => (
                <div className="tally-ask" key={item.place}>
                  <h3>
                    {tell('answersPage.place', {
                      place: item.place,
                      title: graded.practice.families.get(item.family)?.title[lang] ?? item.family,
                    })}
                  </h3>
                  <p>{[saysOfShare(item.share), ...saysOfItem(item)].map(speak).join(' ')}</p>
                </div>
              ))}
          </div>
        </details>
      ))}
    </section>
  );
}

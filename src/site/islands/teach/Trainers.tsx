import { useId, useState } from 'react';
import { kappa } from '../../../practice/statistics/kappa.ts';
import { saysOfAgreement } from '../../../practice/statistics/words.ts';
import type { SiteKey, Speak, Tell } from '../../speak.ts';
import { TextField } from '../TextField.tsx';

interface Props {
  readonly speak: Speak;
  readonly tell: Tell;
}

/** The four ways in which two trainers can have said "holds" or not. */
const ways = ['both', 'first', 'second', 'neither'] as const;
type Way = (typeof ways)[number];
const labels: Readonly<Record<Way, SiteKey>> = {
  both: 'answersPage.both',
  first: 'answersPage.first',
  second: 'answersPage.second',
  neither: 'answersPage.neither',
};

/** A whole count from 0, or nothing where there is none. */
const countOf = (text: string): number | undefined => {
  const trimmed = text.trim();
  if (trimmed === '') return 0;
  return /^\d{1,6}$/.test(trimmed) ? Number(trimmed) : undefined;
};

/** Two trainers who looked at the same work without speaking of it: do they say the same? */
export function Trainers({ speak, tell }: Props) {
  const id = useId();
  const [texts, setTexts] = useState<Readonly<Record<Way, string>>>({
    both: '',
    first: '',
    second: '',
    neither: '',
  });
  const counts = ways.map((way) => countOf(texts[way]));
  const [both, first, second, neither] = counts.map((count) => count ?? 0) as [
    number,
    number,
    number,
    number,
  ];
  const some = both + first + second + neither > 0;
  const sound = counts.every((count) => count !== undefined);
  return (
    <section>
      <h2 className="view-title">{tell('answersPage.trainers')}</h2>
      <p>{tell('answersPage.trainersHint')}</p>
      <div className="fields tally-counts">
        {ways.map((way) => (
          <TextField
            key={way}
            id={`${id}-${way}`}
            label={tell(labels[way])}
            value={texts[way]}
            inputMode="numeric"
            onValue={(value) => setTexts({ ...texts, [way]: value })}
            hint={tell('answersPage.countHint')}
            fault={countOf(texts[way]) === undefined ? tell('answersPage.badCount') : undefined}
          />
        ))}
      </div>
      <p role="status">
        {sound &&
          some &&
          saysOfAgreement(
            kappa([
              [both, first],
              [second, neither],
            ]),
          )
            .map(speak)
            .join(' ')}
      </p>
    </section>
  );
}

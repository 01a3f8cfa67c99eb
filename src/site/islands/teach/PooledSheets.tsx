import { useId, useMemo, useState } from 'react';
import { outOf100 } from '../../../practice/passRule/words.ts';
import { decidePooled, pooledOf } from '../../../practice/statistics/pooled.ts';
import { saysOfPooled } from '../../../practice/statistics/words.ts';
import type { Speak, Tell } from '../../speak.ts';
import type { Graded } from './useTries.ts';

interface Props {
  readonly graded: Graded;
  readonly speak: Speak;
  readonly tell: Tell;
}

/** Shares that may be asked for, with the confidence at which they are to be shown. */
const SHARES = [0.7, 0.8, 0.9, 0.95];
const CONFIDENCE = 0.95;

/** Sheets of one person taken together, against a share that the trainer asks for. */
export function PooledSheets({ graded, speak, tell }: Props) {
  const id = useId();
  const [share, setShare] = useState(0.8);
  const pools = useMemo(() => pooledOf(graded, graded.practice.families), [graded]);
  if (pools.length === 0) return null;
  return (
    <section>
      <h2 className="view-title">{tell('answersPage.pooled')}</h2>
      <p>{tell('answersPage.pooledHint', { confidence: outOf100(CONFIDENCE) })}</p>
      <div className="fields">
        <div>
          <label htmlFor={id}>{tell('answersPage.share')}</label>
          <select id={id} value={share} onChange={(event) => setShare(Number(event.currentTarget.value))}>
            {SHARES.map((one) => (
              <option key={one} value={one}>
                {tell('answersPage.shareOf', { share: outOf100(one) })}
              </option>
            ))}
          </select>
        </div>
      </div>
      <ul className="tally-lines">
        {pools.map((pool) => (
          <li key={pool.person}>
            <strong>{pool.person}</strong>{' '}
            {pool.sheets.map((one) => tell('answersPage.bench', one)).join(', ')}.{' '}
            {saysOfPooled(decidePooled(pool, { confidence: CONFIDENCE, share }))
              .map(speak)
              .join(' ')}
          </li>
        ))}
      </ul>
    </section>
  );
}

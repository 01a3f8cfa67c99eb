import { useState } from 'react';
import type { Family } from '../../../practice/family.ts';
import type { Practice } from '../../../practice/sheet.ts';
import type { Language } from '../../../practice/words.ts';
import { MOST_DRAWS, type Picked } from '../../making/draft.ts';
import { hasNarrowables } from '../../making/narrowing.ts';
import type { Tell } from '../../speak.ts';
import { Example } from './Example.tsx';
import { Narrow } from './Narrow.tsx';
import { useSeen } from './useSeen.ts';

interface Props {
  readonly family: Family;
  readonly pick: Picked;
  readonly sheetId: string;
  readonly place: number;
  /** Narrowed so far that benches get the same of it. */
  readonly alike: boolean;
  readonly practice: Practice;
  readonly number: string;
  readonly onPick: (family: string, pick: Partial<Picked>) => void;
  readonly language: Language;
  readonly tell: Tell;
}

/** An exercise: taken or left, a draw of it, how many, and what is narrowed. Nothing is drawn before it is asked for. */
export function FamilyRow(props: Props) {
  const { family, pick, sheetId, place, alike, practice, number, onPick, language, tell } = props;
  const [open, setOpen] = useState(false);
  const [row, seen] = useSeen<HTMLLIElement>();
  const title = family.title[language.lang] ?? family.title['en'] ?? family.id;
  const asks = family.asks.length;
  const on = pick.draws > 0;
  const counts = Array.from({ length: MOST_DRAWS }, (_, k) => k + 1);
  return (
    <li ref={row}>
      <div className="exercise">
        <label className="choice">
          <input
            type="checkbox"
            checked={on}
            onChange={() => onPick(family.id, on ? { draws: 0 } : { draws: 1 })}
          />
          <i />
          <span>
            {title}{' '}
            <span className="label">
              {tell(asks === 1 ? 'making.asksOne' : 'making.asksMore', { number, count: asks })}
            </span>
          </span>
        </label>
        <button type="button" className="as-link" aria-expanded={open} onClick={() => setOpen(!open)}>
          {tell(open ? 'making.hide' : 'making.see')} <span className="spoken">{title}</span>
        </button>
      </div>
      {on && (
        <div className="taken">
          <div>
            <label htmlFor={`draws-${family.id}`}>
              {tell('making.draws')} <span className="spoken">{title}</span>
            </label>
            <select
              id={`draws-${family.id}`}
              value={pick.draws}
              onChange={(event) => onPick(family.id, { draws: Number(event.currentTarget.value) })}
            >
              {counts.map((count) => (
                <option key={count} value={count}>
                  {count}
                </option>
              ))}
            </select>
          </div>
          {hasNarrowables(family) && (
            <Narrow
              family={family}
              narrow={pick.narrow}
              onNarrow={(narrow) => onPick(family.id, { narrow })}
              language={language}
              world={practice.world}
              tell={tell}
            />
          )}
        </div>
      )}
      {on && alike && (
        <p className="message" role="status">
          {tell('making.alike')}
        </p>
      )}
      {(open || (on && seen)) && (
        <Example
          family={family}
          narrow={pick.narrow}
          sheetId={sheetId}
          place={place}
          brief={!open}
          world={practice.world}
          language={language}
          tell={tell}
        />
      )}
    </li>
  );
}

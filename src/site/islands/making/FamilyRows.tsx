import { useMemo, useState } from 'react';
import { drawOf } from '../../../practice/draw.ts';
import type { Family } from '../../../practice/family.ts';
import { narrowed } from '../../../practice/narrow.ts';
import { type Practice, sheetSeed } from '../../../practice/sheet.ts';
import { tellDraw } from '../../../practice/show.ts';
import type { Language } from '../../../practice/words.ts';
import { type Draft, drawable, familiesOf, MOST_DRAWS, type Pick, sheetIdOf } from '../../making/draft.ts';
import { type Tell, unbroken } from '../../speak.ts';
import { DrawFigures } from '../practice/DrawFigures.tsx';
import { Narrow } from './Narrow.tsx';

interface Props {
  readonly draft: Draft;
  readonly practice: Practice;
  readonly numbers: Readonly<Record<string, string>>;
  readonly onPick: (family: string, pick: Partial<Pick>) => void;
  readonly language: Language;
  readonly tell: Tell;
}

/** Exercises of the chosen tasks: an example draw, how many draws, what is narrowed. */
export function FamilyRows({ draft, practice, numbers, onPick, language, tell }: Props) {
  const [bench, setBench] = useState(1);
  return (
    <section>
      <h2 className="view-title">
        {tell('making.families')} <span className="label">{tell('making.familiesLabel', { bench })}</span>
      </h2>
      <p className="way">
        <button type="button" className="as-link" onClick={() => setBench(bench + 1)}>
          {tell('making.another')}
        </button>
      </p>
      <ul className="made-families">
        {familiesOf(draft, practice.families.values()).map((family) => (
          <FamilyRow
            key={family.id}
            family={family}
            pick={draft.picks[family.id] ?? { draws: 0, narrow: {} }}
            seed={sheetSeed(sheetIdOf(draft.number), bench, 1)}
            practice={practice}
            number={numbers[family.id] ?? ''}
            onPick={(pick) => onPick(family.id, pick)}
            language={language}
            tell={tell}
          />
        ))}
      </ul>
    </section>
  );
}

interface RowProps {
  readonly family: Family;
  readonly pick: Pick;
  readonly seed: string;
  readonly practice: Practice;
  readonly number: string;
  readonly onPick: (pick: Partial<Pick>) => void;
  readonly language: Language;
  readonly tell: Tell;
}

function FamilyRow({ family, pick, seed, practice, number, onPick, language, tell }: RowProps) {
  const { world } = practice;
  const draw = useMemo(() => {
    const less = narrowed(family, pick.narrow);
    return drawable(less, seed, world) ? drawOf(less, seed, world) : undefined;
  }, [family, pick.narrow, seed, world]);
  const shown = useMemo(
    () => (draw === undefined ? undefined : tellDraw(draw, world, language)),
    [draw, world, language],
  );
  const title = family.title[language.lang] ?? family.title['en'] ?? family.id;
  const asks = family.asks.length;
  return (
    <li className={pick.draws > 0 ? 'is-on' : undefined}>
      {draw !== undefined && <DrawFigures draw={draw} world={world} language={language} small />}
      <div>
        <h3>{title}</h3>
        <p className="label">
          {tell(asks === 1 ? 'making.asksOne' : 'making.asksMore', { number, count: asks })}
        </p>
        <label htmlFor={`draws-${family.id}`}>
          {tell('making.draws')} <span className="spoken">{title}</span>
        </label>
        <select
          id={`draws-${family.id}`}
          value={pick.draws}
          onChange={(event) => onPick({ draws: Number(event.currentTarget.value) })}
        >
          {Array.from({ length: MOST_DRAWS + 1 }, (_, count) => count).map((count) => (
            <option key={count} value={count}>
              {count}
            </option>
          ))}
        </select>
        {shown !== undefined && (
          <details className="opens example">
            <summary>{unbroken(shown.asks[0]?.prompt ?? title)}</summary>
            <div>
              <p>{unbroken(shown.text)}</p>
              <ul className="lines">
                {shown.givens.map((given) => (
                  <li key={given.id}>
                    {given.label}: {unbroken(given.text)}
                  </li>
                ))}
              </ul>
              {shown.asks
                .filter((ask) => family.critical.includes(ask.id))
                .map((ask) => (
                  <p className="note" key={ask.id}>
                    {tell('making.critical', { prompt: ask.prompt })}
                  </p>
                ))}
            </div>
          </details>
        )}
        {draw === undefined && (
          <p className="message">
            <strong>{tell('making.undrawable')}</strong>
          </p>
        )}
        {pick.draws > 0 && (
          <Narrow
            family={family}
            narrow={pick.narrow}
            onNarrow={(narrow) => onPick({ narrow })}
            lang={language.lang}
            tell={tell}
          />
        )}
      </div>
    </li>
  );
}

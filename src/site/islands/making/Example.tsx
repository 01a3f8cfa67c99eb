import { useMemo, useState } from 'react';
import { criticalIn } from '../../../practice/draw.ts';
import type { Family } from '../../../practice/family.ts';
import type { World } from '../../../practice/model.ts';
import { type Narrowing, narrowed } from '../../../practice/narrow.ts';
import { tryDraw } from '../../../practice/narrowTried.ts';
import { sheetSeed } from '../../../practice/sheet.ts';
import { tellDraw } from '../../../practice/show.ts';
import type { Language } from '../../../practice/words.ts';
import { type Tell, unbroken } from '../../speak.ts';
import { DrawFigures } from '../practice/DrawFigures.tsx';
import { DrawText } from '../practice/DrawText.tsx';

interface Props {
  readonly family: Family;
  readonly narrow: Narrowing;
  readonly sheetId: string;
  readonly place: number;
  /** The figure alone, or that there is nothing to draw. */
  readonly brief: boolean;
  readonly world: World;
  readonly language: Language;
  readonly tell: Tell;
}

/** What a bench gets of an exercise, without its answer. */
export function Example({ family, narrow, sheetId, place, brief, world, language, tell }: Props) {
  const [bench, setBench] = useState(1);
  const draw = useMemo(() => {
    const drawn = tryDraw(narrowed(family, narrow), sheetSeed(sheetId, bench, place), world);
    return 'draw' in drawn ? drawn.draw : undefined;
  }, [family, narrow, sheetId, bench, place, world]);
  const shown = useMemo(
    () => (draw === undefined || brief ? undefined : tellDraw(draw, world, language)),
    [draw, brief, world, language],
  );
  if (draw === undefined)
    return (
      <p className="message" role="status">
        <strong>{tell('making.undrawable')}</strong>
      </p>
    );
  const critical = criticalIn(draw, world);
  return (
    <div className="example">
      <DrawFigures draw={draw} world={world} language={language} small />
      {shown !== undefined && (
        <div>
          <p className="label">{tell('making.bench', { bench })}</p>
          <DrawText text={shown.text} />
          {shown.givens.length > 0 && (
            <ul className="lines">
              {shown.givens.map((given) => (
                <li key={given.id}>
                  {given.label}: {unbroken(given.text)}
                </li>
              ))}
            </ul>
          )}
          <ol className="lines">
            {shown.asks.map((ask) => (
              <li key={ask.id}>
                {unbroken(ask.prompt)}{' '}
                {critical.includes(ask.id) && <span className="label">{tell('making.critical')}</span>}
              </li>
            ))}
          </ol>
          <p className="way">
            <button type="button" className="as-link" onClick={() => setBench(bench + 1)}>
              {tell('making.another')}
            </button>
          </p>
        </div>
      )}
    </div>
  );
}

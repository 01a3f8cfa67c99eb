import { memo } from 'react';
import { paperPalette } from '../../../drawing/palette.ts';
import type { Practice, Sheet } from '../../../practice/sheet.ts';
import { figuresOf } from '../../../practice/show.ts';
import type { Language } from '../../../practice/words.ts';
import { type Tell, unbroken } from '../../speak.ts';
import { DrawText } from '../practice/DrawText.tsx';
import { useBenchDraws } from './benchDraws.ts';
import { PaperAsk } from './PaperAsk.tsx';

interface Props {
  readonly bench: number;
  readonly sheet: Sheet;
  /** When it is passed, in words. */
  readonly rule: string;
  /** The code of its link, where it is coarse enough for paper. */
  readonly code: string | undefined;
  readonly practice: Practice;
  readonly language: Language;
  readonly tell: Tell;
}

/** The sheet of one bench on paper: name and date, then each draw with room for a pencil. */
export const BenchSheet = memo(function BenchSheet(props: Props) {
  const { bench, sheet, rule, code, practice, language, tell } = props;
  const draws = useBenchDraws(sheet, bench, practice, language);
  return (
    <article className="bench-sheet">
      <header>
        <div>
          <h2>{tell('making.paperHead', { number: sheet.number, bench })}</h2>
          <p>
            {tell('making.paperName')} <span className="blank-line" /> {tell('making.paperDate')}{' '}
            <span className="blank-line short" />
          </p>
          <p>{rule}</p>
          <p>{tell('making.paperCaution')}</p>
        </div>
        {code !== undefined && (
          // biome-ignore lint/security/noDangerouslySetInnerHtml: drawn of squares; no text of anybody's stands in it
          <div className="paper-code" aria-hidden="true" dangerouslySetInnerHTML={{ __html: code }} />
        )}
      </header>
      {draws.map(({ place, draw, shown }) => (
        <section className="paper-draw" key={place}>
          <h3>
            {tell('making.paperDraw', { place })} · {shown.title}
          </h3>
          <DrawText text={shown.text} />
          {figuresOf(draw, practice.world, language, { form: 'paper', palette: paperPalette }).map(
            (figure) => (
              // biome-ignore lint/security/noDangerouslySetInnerHtml: src/drawing escapes every text; it is no reader's input
              <div className="figure" key={figure.words} dangerouslySetInnerHTML={{ __html: figure.svg }} />
            ),
          )}
          {shown.givens.length > 0 && (
            <ul className="paper-known">
              {shown.givens.map(({ id, label, text }) => (
                <li key={id}>
                  {label}: <b>{unbroken(text)}</b>
                </li>
              ))}
            </ul>
          )}
          <ol className="paper-asks">
            {shown.asks.map((ask) => (
              <PaperAsk key={ask.id} ask={ask} tell={tell} />
            ))}
          </ol>
        </section>
      ))}
      <p className="paper-end">{tell('making.paperEnd', { number: sheet.number, bench })}</p>
    </article>
  );
});

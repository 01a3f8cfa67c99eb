import { useEffect, useMemo } from 'react';
import { paperPalette } from '../../../drawing/palette.ts';
import { keyOf } from '../../../practice/key.ts';
import { type Practice, type Sheet, sheetDraws } from '../../../practice/sheet.ts';
import { figuresOf, type ShownAsk, tellDraw } from '../../../practice/show.ts';
import type { Language } from '../../../practice/words.ts';
import { answerText } from '../../practice.ts';
import { type Tell, unbroken } from '../../speak.ts';

export type Printed = 'sheets' | 'key';

interface Props {
  readonly what: Printed;
  readonly sheet: Sheet;
  readonly benches: number;
  readonly practice: Practice;
  readonly language: Language;
  readonly onPrinted: () => void;
  readonly tell: Tell;
}

/** The sheets of all benches, or their keys, for paper alone: printed as soon as they stand. */
export function PrintedSet({ what, sheet, benches, practice, language, onPrinted, tell }: Props) {
  useEffect(() => {
    const done = () => onPrinted();
    window.addEventListener('afterprint', done);
    // Once the browser has drawn them.
    const wait = requestAnimationFrame(() => window.print());
    return () => {
      window.removeEventListener('afterprint', done);
      cancelAnimationFrame(wait);
    };
  }, [onPrinted]);
  const numbers = Array.from({ length: benches }, (_, i) => i + 1);
  return (
    <div className="printed-set">
      {numbers.map((bench) => {
        const props = { bench, sheet, practice, language, tell };
        return what === 'sheets' ? (
          <BenchSheet key={bench} {...props} />
        ) : (
          <BenchKey key={bench} {...props} />
        );
      })}
    </div>
  );
}

interface BenchProps {
  readonly bench: number;
  readonly sheet: Sheet;
  readonly practice: Practice;
  readonly language: Language;
  readonly tell: Tell;
}

function useDraws({ bench, sheet, practice, language }: BenchProps) {
  return useMemo(
    () =>
      sheetDraws(sheet, bench, practice).map(({ place, draw }) => ({
        place,
        draw,
        shown: tellDraw(draw, practice.world, language),
      })),
    [bench, sheet, practice, language],
  );
}

function BenchSheet(props: BenchProps) {
  const { bench, sheet, practice, language, tell } = props;
  const draws = useDraws(props);
  return (
    <article className="bench-sheet">
      <header>
        <h2>{tell('making.paperHead', { number: sheet.number, bench })}</h2>
        <p>
          {tell('making.paperName')} <span className="blank-line" /> {tell('making.paperDate')}{' '}
          <span className="blank-line short" />
        </p>
      </header>
      {draws.map(({ place, draw, shown }) => (
        <section className="paper-draw" key={place}>
          <h3>
            {tell('making.paperDraw', { place })} · {shown.title}
          </h3>
          <p>{unbroken(shown.text)}</p>
          {figuresOf(draw, practice.world, language, { form: 'paper', palette: paperPalette }).map(
            (figure) => (
              // biome-ignore lint/security/noDangerouslySetInnerHtml: src/drawing escapes every text; it is no reader's input
              <div className="figure" key={figure.words} dangerouslySetInnerHTML={{ __html: figure.svg }} />
            ),
          )}
          <p className="paper-known">
            {shown.givens.map(({ label, text }) => `${label}: ${unbroken(text)}`).join(' · ')}
          </p>
          <ol className="paper-asks">
            {shown.asks.map((ask) => (
              <PaperAsk key={ask.id} ask={ask} tell={tell} />
            ))}
          </ol>
        </section>
      ))}
    </article>
  );
}

type PaperAskProps = { readonly ask: Omit<ShownAsk, 'parts'> & Pick<ShownAsk, 'parts'>; readonly tell: Tell };

/** An ask with room for a pencil. */
function PaperAsk({ ask, tell }: PaperAskProps) {
  const { kind, options = [], items = [], parts = [] } = ask;
  return (
    <li>
      {unbroken(ask.prompt)}
      {ask.unit !== undefined && <span className="blank-line short" />}
      {kind === 'order' && <p className="label">{tell('making.paperOrder')}</p>}
      {kind === 'place' && (
        <p className="label">
          {tell('making.paperPlace', { what: options.map(({ text }) => text).join(', ') })}
        </p>
      )}
      {kind === 'faults' && <p className="label">{tell('making.paperFaults')}</p>}
      {kind === 'sticks' && <p className="label">{tell('making.paperSticks')}</p>}
      {kind !== 'place' && options.length > 0 && (
        <ul>
          {options.map((option) => (
            <li key={option.id}>{option.text}</li>
          ))}
        </ul>
      )}
      {items.length > 0 && (
        <ul>
          {items.map((item) => (
            <li key={item.id}>{item.text}</li>
          ))}
        </ul>
      )}
      {parts.length > 0 && (
        <ol>
          {parts.map((part) => (
            <PaperAsk key={part.id} ask={part} tell={tell} />
          ))}
        </ol>
      )}
      {(kind === 'faults' || kind === 'sticks' || kind === 'place') && <span className="blank-lines" />}
    </li>
  );
}

function BenchKey(props: BenchProps) {
  const { bench, sheet, practice, language, tell } = props;
  const draws = useDraws(props);
  return (
    <article className="bench-sheet bench-key">
      <p className="key-band">{tell('making.keyHead')}</p>
      <h2>{tell('making.paperHead', { number: sheet.number, bench })}</h2>
      {draws.map(({ place, draw, shown }) => {
        const { working, critical } = keyOf(draw, practice.world, language);
        return (
          <section className="paper-draw" key={place}>
            <h3>
              {tell('making.paperDraw', { place })} · {shown.title}
            </h3>
            <table>
              <thead>
                <tr>
                  <th scope="col">{tell('making.keyAsk')}</th>
                  <th scope="col">{tell('making.keyHolds')}</th>
                </tr>
              </thead>
              <tbody>
                {shown.asks.map((ask) => (
                  <tr key={ask.id}>
                    <th scope="row">
                      {unbroken(ask.prompt)}
                      {critical.includes(ask.id) && ` (${tell('making.keyMust')})`}
                    </th>
                    <td>{answerText(tell, ask, draw.right[ask.id])}</td>
                  </tr>
                ))}
              </tbody>
            </table>
            <p className="paper-known">{working.map((line) => unbroken(line)).join(' ')}</p>
          </section>
        );
      })}
    </article>
  );
}

import { memo } from 'react';
import { askOf, type Draw } from '../../../practice/draw.ts';
import { keyOf } from '../../../practice/key.ts';
import type { Answer, Answers } from '../../../practice/model.ts';
import type { Practice, Sheet } from '../../../practice/sheet.ts';
import type { ShownAsk } from '../../../practice/show.ts';
import type { Language } from '../../../practice/words.ts';
import { fromInches } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import { answerRows, answerText, question } from '../../practice.ts';
import { type SiteKey, type Tell, unbroken } from '../../speak.ts';
import { useBenchDraws } from './benchDraws.ts';

interface Props {
  readonly bench: number;
  readonly sheet: Sheet;
  readonly practice: Practice;
  readonly language: Language;
  readonly tell: Tell;
}

/** What holds on the sheet of one bench, under its band. */
export const BenchKey = memo(function BenchKey({ bench, sheet, practice, language, tell }: Props) {
  const draws = useBenchDraws(sheet, bench, practice, language);
  return (
    <article className="bench-sheet bench-key">
      <p className="key-band">{tell('making.keyHead')}</p>
      <h2>{tell('making.paperHead', { number: sheet.number, bench })}</h2>
      {draws.map(({ place, draw, shown }) => {
        const { working, critical } = keyOf(draw, practice.world, language);
        // An order is in its row already; its working is the same list.
        const orders = shown.asks.every(({ kind }) => kind === 'order');
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
                      {question(ask)}
                      {critical.includes(ask.id) && ` (${tell('making.keyMust')})`}
                    </th>
                    <td>
                      <Holds draw={draw} ask={ask} right={draw.right[ask.id]} tell={tell} />
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
            {!orders && (
              <ul className="paper-known">
                {working.map((line) => (
                  <li key={line}>{unbroken(line)}</li>
                ))}
              </ul>
            )}
          </section>
        );
      })}
    </article>
  );
});

interface HoldsProps {
  readonly draw: Draw;
  readonly ask: ShownAsk;
  readonly right: Answer | undefined;
  readonly tell: Tell;
}

function Holds({ draw, ask, right, tell }: HoldsProps) {
  const { kind, items = [], parts = [], tolerance = 0, unit } = ask;
  if (kind === 'order')
    return (
      <ol>
        {(right as readonly string[]).map((id) => (
          <li key={id}>{items.find((item) => item.id === id)?.text}</li>
        ))}
      </ol>
    );
  const amount =
    unit === undefined || unit === 'in'
      ? shortLength(fromInches(tolerance))
      : `${Number(tolerance.toFixed(4))} ${tell(`unit.${unit}` as SiteKey)}`;
  const others = askOf(draw.model, ask.id).holds !== undefined && (
    <span className="label"> {tell('making.keyOthers')}</span>
  );
  if (kind === 'job')
    return (
      <>
        <ul>
          {parts.map((part) => (
            <li key={part.id}>
              {question(part)}:{' '}
              {answerText(tell, part, rounded(part, (right as Answers | undefined)?.[part.id]))}
            </li>
          ))}
        </ul>
        {others}
      </>
    );
  return (
    <>
      <Rows rows={answerRows(tell, ask, rounded(ask, right))} />
      {tolerance > 0 && <span className="label"> {tell('making.keyWithin', { tolerance: amount })}</span>}
      {others}
    </>
  );
}

/** One line, or of several things a line each. */
function Rows({ rows }: { readonly rows: readonly string[] }) {
  if (rows.length === 1) return rows[0];
  return (
    <ul>
      {rows.map((row) => (
        <li key={row}>{row}</li>
      ))}
    </ul>
  );
}

/** An area or a load with as many places as its tolerance can tell; a length is to the tape as it stands. */
function rounded({ tolerance = 0, unit }: ShownAsk, right: Answer | undefined): Answer | undefined {
  if (typeof right !== 'number' || unit === 'in') return right;
  const places = tolerance > 0 ? Math.ceil(-Math.log10(tolerance)) : 4;
  return Number(right.toFixed(Math.min(4, Math.max(0, places))));
}

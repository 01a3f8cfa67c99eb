import { useState } from 'react';
import { pagePalette } from '../../drawing/palette.ts';
import { drawSplice } from '../../drawing/splice.ts';
import { drawStrip } from '../../drawing/strip.ts';
import type { How } from '../../drawing/types.ts';
import type { HoleRow } from '../../run/catalogue.ts';
import { formatLength, inches, type Ticks } from '../../trade/length.ts';
import type { SleeveSet } from '../items.ts';
import { barsDesk, barsPhone } from '../pictures/bars.ts';
import { speaker, type Tell, teller, type WordTable } from '../speak.ts';
import {
  barsOf,
  cutRows,
  cutsAtHoles,
  detailOf,
  type PieceAtHole,
  type RunGiven,
  runSum,
  splicePlaces,
} from '../sums.ts';
import { lengthOf, type TapeReading } from '../tape.ts';
import { tried } from '../tried.ts';
import { Arrow } from './Arrow.tsx';
import { useExample } from './example.ts';
import { FeetInches } from './FeetInches.tsx';
import { Figure } from './Figure.tsx';
import { HoleLine, HoleSum } from './Holes.tsx';
import { InMetric } from './InMetric.tsx';
import { Refused } from './Refused.tsx';
import { Worked } from './Worked.tsx';

interface Props {
  readonly words: WordTable;
  /** What the detail of a joint is drawn from; its lengths are those of the sum. */
  readonly set: SleeveSet;
  /** The example that the sheet shows before anyone writes. */
  readonly example: RunGiven;
}

type Fields = { readonly [K in keyof RunGiven]: Ticks | null };
const complete = (fields: Fields): fields is RunGiven =>
  Object.values(fields).every((value) => value !== null);

const entries = [
  ['length', 'cutSheet.runLength', 'feet', true],
  ['insertion', 'cutSheet.insertion', 'inches', false],
  ['gap', 'cutSheet.gap', 'inches', false],
  ['kerf', 'cutSheet.kerf', 'inches', false],
  ['stock', 'cutSheet.stock', 'feet', false],
] as const;

/** A whole run: lengths, cuts and splices from end to end, drawn to scale, with the sum both ways. */
export default function CutRun({ words, set, example }: Props) {
  const speak = speaker(words);
  const tell = teller(words);
  const [fields, setFields] = useState<Fields>(example);
  const read = (name: keyof RunGiven) => (reading: TapeReading) =>
    setFields((old) => ({ ...old, [name]: lengthOf(reading) }));
  const isExample = useExample(entries.every(([name]) => fields[name] === example[name]));
  const said = (text: string) => (isExample ? tell('cutSheet.example', { text }) : text);
  const sum = complete(fields) ? tried(() => ({ given: fields, ...runSum(fields) })) : undefined;
  const atHoles = sum?.good === true ? cutsAtHoles(sum.value.result, sum.value.given.stock, set.tray) : [];

  return (
    <>
      <section className="answer under" aria-live="polite" id="run-answer">
        {sum?.good === true ? (
          <RunAnswer {...sum.value} atHoles={atHoles} holes={set.tray.webHoles} said={said} tell={tell} />
        ) : (
          <>
            <p className="huge">{tell(sum === undefined ? 'cutSheet.nothing' : 'cutSheet.cannot')}</p>
            {sum?.good === false && <Refused faults={sum.faults} tell={tell} />}
          </>
        )}
        <p className="at-phone change">
          <a className="button second" href="#run-measured">
            {tell('cutSheet.change')} <Arrow />
          </a>
        </p>
      </section>
      <div className="columns">
        <div>
          {sum?.good === true && (
            <Figure
              caption={tell('cutSheet.runCaption')}
              drawings={(['phone', 'desk'] as const).map((form) =>
                drawStrip(
                  { leg: sum.value.result.leg, stock: sum.value.given.stock, kerf: sum.value.given.kerf },
                  { form, palette: pagePalette, speak },
                ),
              )}
            />
          )}
          {sum?.good === true && (
            <RunLists
              {...sum.value}
              atHoles={atHoles}
              set={set}
              tell={tell}
              how={{ palette: pagePalette, speak }}
            />
          )}
        </div>
        <form id="run-measured" className="off-paper" onSubmit={(event) => event.preventDefault()}>
          <h3 className="view-title">{tell('cutSheet.yours')}</h3>
          {entries.map(([name, legend, scale, tape]) => (
            <FeetInches
              key={name}
              legend={tell(legend)}
              initial={example[name]}
              onReading={read(name)}
              tell={tell}
              speak={speak}
              scale={scale}
              tape={tape}
            />
          ))}
          <p className="at-phone">
            <a className="button" href="#run-answer">
              {tell('cutSheet.workOut')} <Arrow />
            </a>
          </p>
        </form>
      </div>
    </>
  );
}

type Run = ReturnType<typeof runSum>;

interface AnswerProps extends Run {
  readonly given: RunGiven;
  readonly atHoles: readonly PieceAtHole[];
  readonly holes: HoleRow;
  /** Says that it is the example, while it is. */
  readonly said: (text: string) => string;
  readonly tell: Tell;
}

function RunAnswer({ given, result, atHoles, holes, said, tell }: AnswerProps) {
  const last = result.cuts.at(-1);
  const values = { lengths: result.lengths, cuts: result.cuts.length };
  const several = result.cuts.length > 1;
  return (
    <>
      <p className="label">{said(tell('cutSheet.runAsked', { length: formatLength(given.length) }))}</p>
      <p className="huge">
        {said(
          tell(
            result.lengths === 1
              ? 'cutSheet.oneLength'
              : several
                ? 'cutSheet.lengthsCuts'
                : 'cutSheet.lengths',
            values,
          ),
        )}
        {last !== undefined && (
          <>
            <br />
            {tell(
              several ? 'cutSheet.cutBoth' : result.lengths === 1 ? 'cutSheet.cutOne' : 'cutSheet.cutLast',
              {
                text: result.cuts.map(({ cut }) => formatLength(cut)).join(', '),
              },
            )}
          </>
        )}
      </p>
      {last !== undefined && <InMetric inches={inches(last.cut)} tell={tell} />}
      {atHoles.map(({ piece, found }) => (
        <HoleLine key={piece} piece={piece} found={found} holes={holes} tell={tell} />
      ))}
    </>
  );
}

interface ListsProps extends Run {
  readonly given: RunGiven;
  readonly atHoles: readonly PieceAtHole[];
  readonly set: SleeveSet;
  readonly tell: Tell;
  readonly how: Omit<How, 'form'>;
}

function RunLists({ result, steps, given, atHoles, set, tell, how }: ListsProps) {
  const rows = cutRows(result);
  const places = splicePlaces(result);
  const bars = barsOf(result, given.stock, tell);
  const words = bars.map(({ label, piece, left }) => `${label}: ${piece} ${left}`).join(' ');
  const joint = result.leg.joints.find((made) => made.kind === 'socketed');
  return (
    <>
      <h3 className="view-title">
        {tell('cutSheet.list')} <span className="label">{tell('cutSheet.twice')}</span>
      </h3>
      <table>
        <thead>
          <tr>
            <th scope="col">{tell('cutSheet.piece')}</th>
            <th scope="col" className="num">
              {tell('cutSheet.to')}
            </th>
            <th scope="col">{tell('cutSheet.from')}</th>
            <th scope="col" className="num">
              {tell('cutSheet.left')}
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ number, cut, whole, left }) => (
            <tr key={number}>
              <th scope="row">{number}</th>
              <td className="num">{cut}</td>
              <td>{tell('cutSheet.length', { number })}</td>
              <td className="num">{whole ? tell('cutSheet.none') : left}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {places.length > 0 && (
        <table>
          <thead>
            <tr>
              <th scope="col">{tell('cutSheet.splice')}</th>
              <th scope="col" className="num">
                {tell('cutSheet.centre')}
              </th>
            </tr>
          </thead>
          <tbody>
            {places.map(({ name, at }) => (
              <tr key={name}>
                <th scope="row">{name}</th>
                <td className="num">{at}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <h3 className="view-title">{tell('cutSheet.bars')}</h3>
      {/* biome-ignore lint/security/noDangerouslySetInnerHtml: pictures/line.ts escapes every text; it is no reader's input */}
      <div className="figure at-phone" dangerouslySetInnerHTML={{ __html: barsPhone(bars, words) }} />
      {/* biome-ignore lint/security/noDangerouslySetInnerHtml: as above */}
      <div className="figure at-desk at-paper" dangerouslySetInnerHTML={{ __html: barsDesk(bars, words) }} />
      <h3 className="view-title">{tell('cutSheet.sum')}</h3>
      <Worked steps={steps} speak={how.speak} tell={tell} />
      <table className="sum-table">
        <thead>
          <tr>
            <th scope="col">{tell('cutSheet.piece')}</th>
            <th scope="col" className="num">
              {tell('cutSheet.clear')}
            </th>
            <th scope="col" className="num">
              {tell('cutSheet.into')}
            </th>
            <th scope="col" className="num">
              {tell('cutSheet.to')}
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ number, clear, into, cut }) => (
            <tr key={number}>
              <th scope="row">{number}</th>
              <td className="num">{clear}</td>
              <td className="num">{into.length === 0 ? tell('cutSheet.none') : into.join(' + ')}</td>
              <td className="num">{cut}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {atHoles.map(({ piece, found }) => (
        <HoleSum key={piece} piece={piece} found={found} speak={how.speak} tell={tell} />
      ))}
      {joint !== undefined && (
        <Figure
          caption={tell('cutSheet.detail')}
          drawings={(['phone', 'desk'] as const).map((form) =>
            drawSplice(detailOf(joint, given, set), { ...how, form }),
          )}
        />
      )}
    </>
  );
}

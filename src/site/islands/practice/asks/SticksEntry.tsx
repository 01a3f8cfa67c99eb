import { useId, useState } from 'react';
import { askOf } from '../../../../practice/draw.ts';
import type { StickCut } from '../../../../practice/model.ts';
import { inches } from '../../../../trade/length.ts';
import { shortLength } from '../../../../trade/shortLength.ts';
import { unbroken } from '../../../speak.ts';
import { asCuts, type Bench, benchOf, onto, takeAnother, taken } from './bench.ts';
import type { EntryProps } from './entry.ts';

/** Pieces laid onto lengths and remnants: a list at every piece says from which it is cut. */
export function SticksEntry({
  ask,
  answer,
  onAnswer,
  draw,
  within,
  world,
  tell,
}: EntryProps<readonly StickCut[]>) {
  const id = useId();
  const [given] = useState(() => {
    const sticks = askOf(draw.model, within).sticks?.(draw.plan, world);
    if (sticks === undefined) throw new Error(`${draw.family.id}: ${within} gives nothing to cut from`);
    return sticks;
  });
  const [bench, setBench] = useState<Bench>(() => benchOf(given, answer));
  const [said, setSaid] = useState('');
  const lengthOf = (from: string) =>
    shortLength(given.from.find((one) => one.id === from)?.length ?? given.kerf);
  const nameOf = (bar: number) => {
    const from = bench.bars[bar] ?? '';
    const many = given.from.find((one) => one.id === from)?.many ?? false;
    const values = { number: bar + 1, length: lengthOf(from) };
    return tell(many ? 'asks.wholeLength' : 'asks.remnant', values);
  };
  const pieceText = (piece: number) =>
    tell('asks.piece', { number: piece + 1, length: shortLength(given.pieces[piece] ?? given.kerf) });
  const change = (next: Bench, saying: string) => {
    setBench(next);
    const cuts = asCuts(next, given);
    onAnswer(cuts.length === 0 ? undefined : cuts);
    setSaid(saying);
  };
  return (
    <fieldset>
      <legend>{unbroken(ask.prompt)}</legend>
      <ul className="sticks-pieces">
        {given.pieces.map((length, piece) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: pieces of one length differ by their number alone
          <li key={piece}>
            <label htmlFor={`${id}-${piece}`}>{unbroken(pieceText(piece))}</label>
            <select
              id={`${id}-${piece}`}
              value={bench.on[piece] ?? ''}
              data-piece={inches(length)}
              onChange={(event) => {
                const bar = event.currentTarget.value === '' ? null : Number(event.currentTarget.value);
                const says = { piece: pieceText(piece), bar: bar === null ? '' : nameOf(bar) };
                change(onto(bench, piece, bar), tell(bar === null ? 'asks.offBar' : 'asks.ontoBar', says));
              }}
            >
              <option value="">{tell('asks.notCut')}</option>
              {bench.bars.map((_, bar) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: a bar is its number
                <option key={bar} value={bar}>
                  {nameOf(bar)}
                </option>
              ))}
            </select>
          </li>
        ))}
      </ul>
      <div className="buttons">
        {given.from
          .filter(({ many }) => many)
          .map(({ id: from, length }) => (
            <button
              type="button"
              className="button second small"
              key={from}
              onClick={() =>
                change(
                  takeAnother(bench, from),
                  tell('asks.tookLength', { number: bench.bars.length + 1, length: shortLength(length) }),
                )
              }
            >
              {tell('asks.another', { length: shortLength(length) })}
            </button>
          ))}
      </div>
      <table className="plain bars">
        <caption>{tell('asks.bars')}</caption>
        <tbody>
          {bench.bars.map((from, bar) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a bar is its number
            <tr key={bar} data-from={from}>
              <th scope="row">{nameOf(bar)}</th>
              <td className={taken(bench, bar).length === 0 ? 'none' : undefined}>
                {taken(bench, bar)
                  .map((piece) => shortLength(given.pieces[piece] ?? given.kerf))
                  .join(', ') || tell('asks.nothingFrom')}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="spoken" role="status">
        {said}
      </p>
    </fieldset>
  );
}

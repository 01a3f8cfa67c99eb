import { useState } from 'react';
import type { Measured } from '../../../register/bodies.ts';
import { formatLength, type Ticks } from '../../../trade/length.ts';
import type { SiteKey, Speak, Tell } from '../../speak.ts';
import { lengthOf } from '../../tape.ts';
import { outOfTexts, outText } from '../../witness.ts';
import { Arrow } from '../Arrow.tsx';
import { FeetInches } from '../FeetInches.tsx';
import { TextField } from '../TextField.tsx';

interface Props {
  /** Pieces or positions that the task wants measured. */
  readonly wants: number;
  readonly rows: readonly Measured[];
  readonly onRows: (rows: readonly Measured[]) => void;
  readonly speak: Speak;
  readonly tell: Tell;
}

/** Pieces measured: what, wanted, got, tool. One is entered at a time, with the tape under what was got. */
export function MeasuredRows({ wants, rows, onRows, speak, tell }: Props) {
  const [what, setWhat] = useState('');
  const [wanted, setWanted] = useState<Ticks | null>(null);
  const [got, setGot] = useState<Ticks | null>(null);
  const [tool, setTool] = useState('');
  const [other, setOther] = useState(false);
  const [texts, setTexts] = useState({ wanted: '', got: '' });
  const [fresh, setFresh] = useState(0);
  const [refused, setRefused] = useState<SiteKey | null>(null);
  const add = () => {
    const name = what.trim();
    const read = other
      ? { wanted: texts.wanted.trim(), got: texts.got.trim() }
      : {
          wanted: wanted === null ? '' : formatLength(wanted, 64),
          got: got === null ? '' : formatLength(got, 64),
        };
    if (name === '' || read.wanted === '' || read.got === '') return setRefused('witness.pieceMissing');
    if (tool.trim() === '') return setRefused('look.pieceTool');
    if (rows.some((row) => row.what === name)) return setRefused('witness.pieceTwice');
    setRefused(null);
    onRows([...rows, { what: name, ...read, tool: tool.trim() }]);
    setWhat('');
    setWanted(null);
    setGot(null);
    setTexts({ wanted: '', got: '' });
    setFresh((n) => n + 1);
  };
  return (
    <section>
      <h2 className="view-title">
        {tell('witness.measured')}{' '}
        <span className="label">
          {wants === 0
            ? tell('witness.measuredNone')
            : tell('witness.measuredWants', { count: rows.length, n: wants })}
        </span>
      </h2>
      {wants > 0 && <p className="note">{tell('witness.measuredLine', { n: wants })}</p>}
      {rows.length > 0 && (
        <ul className="measured">
          {rows.map((row) => (
            <li key={row.what}>
              <div>
                <strong>{row.what}</strong>
                <p className="note">
                  {outOfTexts(row, tell) === ''
                    ? tell('look.rowOther', { wanted: row.wanted })
                    : tell('witness.row', { wanted: row.wanted, out: outOfTexts(row, tell) })}
                  {row.tool !== null && ` ${tell('witness.rowTool', { tool: row.tool })}`}
                </p>
              </div>
              <span className="ring dim">{row.got}</span>
              <button
                type="button"
                className="as-link offer"
                onClick={() => onRows(rows.filter((one) => one !== row))}
              >
                {tell('witness.strike', { what: row.what })}
              </button>
            </li>
          ))}
        </ul>
      )}
      <details className="opens" open={wants > rows.length ? true : undefined}>
        <summary>{tell('witness.measureOne')}</summary>
        <div>
          <div className="fields">
            <TextField id="measured-what" label={tell('witness.piece')} value={what} onValue={setWhat} />
            <TextField
              id="measured-tool"
              label={tell('witness.tool')}
              value={tool}
              onValue={setTool}
              hint={tell('witness.toolHint')}
            />
          </div>
          <div className="kind-of-reading">
            <label htmlFor="measured-kind">{tell('look.reading')}</label>
            <select
              id="measured-kind"
              value={other ? 'other' : 'length'}
              onChange={(event) => setOther(event.currentTarget.value === 'other')}
            >
              <option value="length">{tell('look.lengthReading')}</option>
              <option value="other">{tell('look.otherReading')}</option>
            </select>
          </div>
          {other ? (
            <div className="fields">
              <TextField
                id="measured-wanted"
                label={tell('witness.wantedLength')}
                value={texts.wanted}
                onValue={(text) => setTexts({ ...texts, wanted: text })}
                hint={tell('look.otherHint')}
              />
              <TextField
                id="measured-got"
                label={tell('witness.gotLength')}
                value={texts.got}
                onValue={(text) => setTexts({ ...texts, got: text })}
              />
            </div>
          ) : (
            <>
              <FeetInches
                key={`wanted-${fresh}`}
                legend={tell('witness.wantedLength')}
                initial={null}
                tape={false}
                onReading={(reading) => setWanted(lengthOf(reading))}
                tell={tell}
                speak={speak}
              />
              <FeetInches
                key={`got-${fresh}`}
                legend={tell('witness.gotLength')}
                initial={null}
                onReading={(reading) => setGot(lengthOf(reading))}
                tell={tell}
                speak={speak}
              />
              <p role="status">
                {wanted !== null && got !== null && tell('witness.out', { out: outText(wanted, got, tell) })}
              </p>
            </>
          )}
          <p className="message" role="alert">
            {refused !== null && <strong>{tell(refused, { what: what.trim() })}</strong>}
          </p>
          <button type="button" className="button second" onClick={add}>
            {tell('witness.add')} <Arrow />
          </button>
        </div>
      </details>
    </section>
  );
}

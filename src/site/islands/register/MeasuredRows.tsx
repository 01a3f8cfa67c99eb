import { useState } from 'react';
import type { Measured } from '../../../register/bodies.ts';
import { formatLength, readLength, type Ticks } from '../../../trade/length.ts';
import type { Speak, Tell } from '../../speak.ts';
import type { TapeReading } from '../../tape.ts';
import { outText } from '../../witness.ts';
import { Arrow } from '../Arrow.tsx';
import { FeetInches } from '../FeetInches.tsx';

interface Props {
  /** Pieces or positions that the task wants measured. */
  readonly wants: number;
  readonly rows: readonly Measured[];
  readonly onRows: (rows: readonly Measured[]) => void;
  readonly speak: Speak;
  readonly tell: Tell;
}

const lengthOf = (reading: TapeReading): Ticks | null => (reading.read === 'length' ? reading.length : null);

/** Pieces measured: what, wanted, got, tool. One is entered at a time, with the tape under what was got. */
export function MeasuredRows({ wants, rows, onRows, speak, tell }: Props) {
  const [what, setWhat] = useState('');
  const [wanted, setWanted] = useState<Ticks | null>(null);
  const [got, setGot] = useState<Ticks | null>(null);
  const [tool, setTool] = useState('');
  const [fresh, setFresh] = useState(0);
  const [missing, setMissing] = useState(false);
  const add = () => {
    const lacks = what.trim() === '' || wanted === null || got === null;
    setMissing(lacks);
    if (lacks) return;
    const texts = { wanted: formatLength(wanted, 64), got: formatLength(got, 64) };
    onRows([...rows, { what: what.trim(), ...texts, tool: tool.trim() === '' ? null : tool.trim() }]);
    setWhat('');
    setWanted(null);
    setGot(null);
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
      {rows.length > 0 && (
        <ul className="measured">
          {rows.map((row) => (
            <li key={row.what}>
              <div>
                <strong>{row.what}</strong>
                <p className="note">
                  {tell('witness.row', {
                    wanted: row.wanted,
                    out: outText(readLength(row.wanted), readLength(row.got), tell),
                  })}
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
            <div>
              <label htmlFor="measured-what">{tell('witness.piece')}</label>
              <input
                id="measured-what"
                type="text"
                autoComplete="off"
                value={what}
                onChange={(event) => setWhat(event.currentTarget.value)}
              />
            </div>
            <div>
              <label htmlFor="measured-tool">{tell('witness.tool')}</label>
              <input
                id="measured-tool"
                type="text"
                autoComplete="off"
                value={tool}
                aria-describedby="measured-tool-hint"
                onChange={(event) => setTool(event.currentTarget.value)}
              />
              <p className="hint" id="measured-tool-hint">
                {tell('witness.toolHint')}
              </p>
            </div>
          </div>
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
          <p className="message" role="alert">
            {missing && <strong>{tell('witness.pieceMissing')}</strong>}
          </p>
          <button type="button" className="button second" onClick={add}>
            {tell('witness.add')} <Arrow />
          </button>
        </div>
      </details>
    </section>
  );
}

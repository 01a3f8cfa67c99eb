import { type ReactNode, useState } from 'react';
import { shortLength } from '../../../trade/shortLength.ts';
import type { Speak, Tell } from '../../speak.ts';
import { offRack, onRack } from '../../sticks/rack.ts';
import type { TapeReading } from '../../tape.ts';
import { Arrow } from '../Arrow.tsx';
import { FeetInches } from '../FeetInches.tsx';
import type { RackHeld } from './useRack.ts';

interface Props {
  readonly held: RackHeld;
  readonly tell: Tell;
  readonly speak: Speak;
  /** What the plan does to the rack. */
  readonly children?: ReactNode;
}

const nothing: TapeReading = { read: 'blank' };

/** The rack of remnants: what lies on it, taken off one by one, put on by hand. */
export function RackSection({ held, tell, speak, children }: Props) {
  const { rack, stays, change } = held;
  const [reading, setReading] = useState<TapeReading>(nothing);
  const [count, setCount] = useState('1');
  const [wrong, setWrong] = useState(false);
  const [turn, setTurn] = useState(0);
  const put = () => {
    const many = /^\d+$/.test(count.trim()) ? Number(count) : 0;
    if (reading.read !== 'length' || reading.length === 0 || many === 0 || many > 999) return setWrong(true);
    const { length } = reading;
    change((old) => onRack(old, length, many));
    setWrong(false);
    setReading(nothing);
    setCount('1');
    setTurn(turn + 1);
  };
  return (
    <section aria-labelledby="rack">
      <h2 className="view-title" id="rack">
        {tell('sticksSheet.rack')}
      </h2>
      <p className="hint">{tell('sticksSheet.rackHint')}</p>
      {!stays && (
        <p className="message">
          <strong>{tell('sticksSheet.stays')}</strong>
        </p>
      )}
      {rack.length === 0 ? (
        <p className="nothing">{tell('sticksSheet.rackEmpty')}</p>
      ) : (
        <ul className="rack">
          {rack.map(({ length, count: many }) => (
            <li key={length}>
              <span>{tell('sticksSheet.rackRow', { count: many, length: shortLength(length) })}</span>
              <button
                type="button"
                className="as-link offer"
                onClick={() => change((old) => offRack(old, length))}
              >
                {tell('sticksSheet.takeOff', { length: shortLength(length) })}
              </button>
            </li>
          ))}
        </ul>
      )}
      {children}
      <form
        className="put-on"
        onSubmit={(event) => {
          event.preventDefault();
          put();
        }}
      >
        <FeetInches
          key={turn}
          legend={tell('sticksSheet.putLegend')}
          initial={null}
          onReading={setReading}
          tape={false}
          describedBy={wrong ? 'rack-wrong' : undefined}
          tell={tell}
          speak={speak}
        />
        <div className="entry">
          <label htmlFor="rack-count">{tell('sticksSheet.count')}</label>
          <input
            id="rack-count"
            type="text"
            inputMode="numeric"
            autoComplete="off"
            value={count}
            aria-describedby={wrong ? 'rack-wrong' : undefined}
            onChange={(event) => setCount(event.currentTarget.value)}
          />
        </div>
        {wrong && (
          <p className="message" id="rack-wrong" role="alert">
            <strong>{tell('sticksSheet.putWrong')}</strong>
          </p>
        )}
        <button type="submit" className="button second">
          {tell('sticksSheet.put')} <Arrow />
        </button>
      </form>
    </section>
  );
}

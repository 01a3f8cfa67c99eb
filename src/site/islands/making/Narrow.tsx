import { useMemo, useState } from 'react';
import type { Family } from '../../../practice/family.ts';
import type { World } from '../../../practice/model.ts';
import { type Narrowing, sizeOf } from '../../../practice/narrow.ts';
import type { Language } from '../../../practice/words.ts';
import { type Narrowable, narrowables, withNarrow } from '../../making/narrowing.ts';
import type { Tell } from '../../speak.ts';

interface Props {
  readonly family: Family;
  readonly narrow: Narrowing;
  readonly onNarrow: (narrow: Narrowing) => void;
  readonly language: Language;
  readonly world: World;
  readonly tell: Tell;
}

/** What a seed chooses, each cut to less: from and to, or which words. Its words are found once it is opened. */
export function Narrow({ family, narrow, onNarrow, language, world, tell }: Props) {
  const [open, setOpen] = useState(false);
  const { lang, speak } = language;
  const means = useMemo(
    () => ({
      lang,
      world,
      width: tell('making.width'),
      unitOf: (unit: string) => speak({ say: `unit.${unit}` }),
    }),
    [lang, speak, world, tell],
  );
  const all = useMemo(() => (open ? narrowables(family, narrow, means) : []), [open, family, narrow, means]);
  const count = Object.keys(narrow).length;
  return (
    <details className="opens narrow" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{tell(count > 0 ? 'making.narrowed' : 'making.narrow')}</summary>
      <div>
        {open && all.length === 0 && <p className="hint">{tell('making.nothingToNarrow')}</p>}
        {all.map((one) => (
          <NarrowOne
            key={one.name}
            one={one}
            id={`${family.id}-${one.name}`}
            of={sizeOf(family.parameters[one.name] ?? { choice: [] })}
            onChange={(change) => onNarrow(withNarrow(family, narrow, one.name, change))}
            tell={tell}
          />
        ))}
        {count > 0 && (
          <p className="way">
            <button type="button" className="as-link" onClick={() => onNarrow({})}>
              {tell('making.widen')}
            </button>
          </p>
        )}
      </div>
    </details>
  );
}

interface OneProps {
  readonly one: Narrowable;
  readonly id: string;
  readonly of: number;
  readonly onChange: (change: Parameters<typeof withNarrow>[3]) => void;
  readonly tell: Tell;
}

function NarrowOne({ one, id, of, onChange, tell }: OneProps) {
  const { label, left } = one;
  if (one.kind === 'words') {
    const chosen = one.words.filter(({ on }) => on).map((word) => word.id);
    return (
      <fieldset>
        <legend>{label}</legend>
        {one.words.map((word) => (
          <label className="choice" key={word.id}>
            <input
              type="checkbox"
              checked={word.on}
              disabled={word.on && chosen.length === 1}
              onChange={() =>
                onChange({
                  choice: word.on ? chosen.filter((other) => other !== word.id) : [...chosen, word.id],
                })
              }
            />
            <i />
            {word.text}
          </label>
        ))}
        <p className="hint">{leftOf(left, of, tell)}</p>
      </fieldset>
    );
  }
  const { stops, from, to } = one;
  return (
    <fieldset>
      <legend>{label}</legend>
      <div className="fields two">
        <div>
          <label htmlFor={`${id}-from`}>{tell('making.shortest')}</label>
          <select
            id={`${id}-from`}
            value={from}
            onChange={(event) => onChange({ from: Number(event.currentTarget.value), to })}
          >
            {stops
              .filter(({ value }) => value <= to)
              .map(({ value, text }) => (
                <option key={value} value={value}>
                  {text}
                </option>
              ))}
          </select>
        </div>
        <div>
          <label htmlFor={`${id}-to`}>{tell('making.longest')}</label>
          <select
            id={`${id}-to`}
            value={to}
            onChange={(event) => onChange({ from, to: Number(event.currentTarget.value) })}
          >
            {stops
              .filter(({ value }) => value >= from)
              .map(({ value, text }) => (
                <option key={value} value={value}>
                  {text}
                </option>
              ))}
          </select>
        </div>
      </div>
      <RangeLine first={stops[0]?.value ?? 0} last={stops.at(-1)?.value ?? 1} from={from} to={to} />
      <p className="hint">{leftOf(left, of, tell)}</p>
    </fieldset>
  );
}

const leftOf = (left: number, of: number, tell: Tell): string =>
  left === of
    ? tell('making.leftAll', { of })
    : left === 1
      ? tell('making.leftOne', { of })
      : tell('making.left', { count: left, of });

/** The part that is left, as a piece cut out of a hidden line. */
function RangeLine(props: Readonly<Record<'first' | 'last' | 'from' | 'to', number>>) {
  const { first, last, from, to } = props;
  const at = (value: number) => 8 + (284 * (value - first)) / Math.max(last - first, 1e-9);
  return (
    <svg className="range-line" viewBox="0 0 300 24" aria-hidden="true" focusable="false">
      <path d="M8 12H292" stroke="currentColor" strokeWidth="1.4" strokeDasharray="7 3.5" />
      <path d="M8 4V20M292 4V20" stroke="currentColor" strokeWidth="1.4" />
      <rect
        x={at(from)}
        y="6"
        width={Math.max(at(to) - at(from), 3)}
        height="12"
        fill="var(--galv)"
        stroke="currentColor"
        strokeWidth="2.5"
      />
    </svg>
  );
}

import { useId } from 'react';

interface Props<V extends string> {
  readonly legend: string;
  readonly note?: string | undefined;
  /** Id of words that belong to the choice. */
  readonly describedBy?: string | undefined;
  readonly options: readonly { readonly value: V; readonly text: string; readonly off?: boolean }[];
  readonly value: V | null;
  readonly onValue: (value: V) => void;
  /** Initials of the one who chooses: they stand in the box that is taken. */
  readonly initials: string;
}

/** One choice of a few: a box each, dashed while empty, with the chooser's initials when taken. */
export function Choices<V extends string>(props: Props<V>) {
  const { legend, note, describedBy, options, value, onValue, initials } = props;
  const name = useId();
  return (
    <fieldset className="choices" aria-describedby={describedBy}>
      <legend>{legend}</legend>
      <div>
        {options.map((option) => (
          <label className={`choice${option.off === true ? ' is-off' : ''}`} key={option.value}>
            <input
              type="radio"
              name={name}
              value={option.value}
              disabled={option.off === true}
              checked={value === option.value}
              onChange={() => onValue(option.value)}
            />
            <i aria-hidden="true">
              <span>{initials}</span>
            </i>
            {option.text}
          </label>
        ))}
      </div>
      {note !== undefined && <p className="note">{note}</p>}
    </fieldset>
  );
}

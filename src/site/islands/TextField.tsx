import type { ReactNode } from 'react';

interface Props {
  readonly id: string;
  readonly label: string;
  readonly value: string;
  readonly onValue: (value: string) => void;
  /** Words below the field that belong to it. */
  readonly hint?: string;
  /** What is wrong with it, said in the place of the hint. */
  readonly fault?: string | undefined;
  /** An id or a zone: a phone must not raise its first letter. */
  readonly plain?: boolean;
  readonly numeric?: boolean;
  readonly name?: string;
  readonly placeholder?: string;
  /** Ids of an own `<datalist>`, and of other words that belong to the field. */
  readonly list?: string;
  readonly describedBy?: string;
  /** What else stands under it, as a refusal. */
  readonly children?: ReactNode;
}

/** One line of text under its label. */
export function TextField(props: Props) {
  const { id, label, value, onValue, hint, fault, plain, numeric, name, placeholder, list, children } = props;
  const below = hint !== undefined || fault !== undefined;
  return (
    <div>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        name={name}
        type="text"
        list={list}
        inputMode={numeric === true ? 'numeric' : undefined}
        autoComplete="off"
        autoCapitalize={plain === true ? 'none' : undefined}
        placeholder={placeholder}
        value={value}
        aria-invalid={fault === undefined ? undefined : true}
        aria-describedby={props.describedBy ?? (below ? `${id}-hint` : undefined)}
        onChange={(event) => onValue(event.currentTarget.value)}
      />
      {below && (
        <p className="hint" id={`${id}-hint`}>
          {fault === undefined ? hint : <strong>{fault}</strong>}
        </p>
      )}
      {children}
    </div>
  );
}

import type { InputHTMLAttributes, ReactNode } from 'react';

interface Props
  extends Pick<
    InputHTMLAttributes<HTMLInputElement>,
    'type' | 'name' | 'list' | 'placeholder' | 'inputMode' | 'autoCapitalize' | 'aria-describedby'
  > {
  readonly id: string;
  readonly label: string;
  readonly value: string;
  readonly onValue: (value: string) => void;
  /** Words below the field that belong to it. */
  readonly hint?: string;
  /** What is wrong with it, said in the place of the hint. */
  readonly fault?: string | undefined;
  /** What else stands under it, as a refusal. */
  readonly children?: ReactNode;
}

/** One line of text under its label. An id or a zone wants `autoCapitalize="none"`. */
export function TextField({ id, label, value, onValue, hint, fault, children, ...input }: Props) {
  return (
    <div>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="text"
        autoComplete="off"
        value={value}
        aria-invalid={fault === undefined ? undefined : true}
        aria-describedby={hint === undefined ? undefined : `${id}-hint`}
        onChange={(event) => onValue(event.currentTarget.value)}
        {...input}
      />
      {hint !== undefined && (
        <p className="hint" id={`${id}-hint`}>
          {fault === undefined ? hint : <strong>{fault}</strong>}
        </p>
      )}
      {children}
    </div>
  );
}

import { type RefObject, useEffect, useRef } from 'react';
import type { Fault } from '../../../trade/given.ts';
import { onLeaving } from '../../device/leaving.ts';
import type { Tell } from '../../speak.ts';

/** A passphrase is held by its field alone, taken once, and forgotten when the page is left or hidden, or after two minutes. */
export function usePassphrase() {
  const box = useRef<HTMLInputElement>(null);
  const stop = useRef<(() => void) | undefined>(undefined);
  const forget = () => {
    stop.current?.();
    stop.current = undefined;
    if (box.current !== null) box.current.value = '';
  };
  const touched = () => {
    stop.current?.();
    stop.current = onLeaving(forget);
  };
  useEffect(() => () => stop.current?.(), []);
  /** What stands in the field; it is empty afterwards. */
  const take = (): string => {
    const text = box.current?.value ?? '';
    forget();
    return text;
  };
  return { box, touched, take };
}

/** The fault of a passphrase that is not written: known before a key is opened. */
export const emptyPassphrase = (passphrase: string, tell: Tell): readonly Fault[] =>
  passphrase === ''
    ? [{ field: 'passphrase', message: tell('witness.passEmpty'), todo: tell('witness.passMissing') }]
    : [];

interface Props {
  readonly id: string;
  readonly label: string;
  readonly hint: string;
  readonly fresh?: boolean;
  readonly field: { readonly box: RefObject<HTMLInputElement | null>; readonly touched: () => void };
}

export function Passphrase({ id, label, hint, fresh = false, field }: Props) {
  return (
    <div>
      <label htmlFor={id}>{label}</label>
      <input
        ref={field.box}
        id={id}
        type="password"
        autoComplete={fresh ? 'new-password' : 'off'}
        aria-describedby={`${id}-hint`}
        onInput={field.touched}
      />
      <p className="hint" id={`${id}-hint`}>
        {hint}
      </p>
    </div>
  );
}

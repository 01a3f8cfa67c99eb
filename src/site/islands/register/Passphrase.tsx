import { type RefObject, useEffect, useRef } from 'react';
import type { Fault } from '../../../trade/given.ts';
import type { Tell } from '../../speak.ts';

/** How long a passphrase that nobody touches may stand in its field, ms. */
const IDLE = 120_000;

/** A passphrase is held by its field alone, taken once, and forgotten on leaving the page or after two minutes. */
export function usePassphrase() {
  const box = useRef<HTMLInputElement>(null);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const forget = () => {
    clearTimeout(timer.current);
    if (box.current !== null) box.current.value = '';
  };
  const touched = () => {
    clearTimeout(timer.current);
    timer.current = setTimeout(forget, IDLE);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: one listener for the life of the field
  useEffect(() => {
    addEventListener('pagehide', forget);
    return () => {
      removeEventListener('pagehide', forget);
      clearTimeout(timer.current);
    };
  }, []);
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

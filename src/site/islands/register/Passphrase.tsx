import { type RefObject, useEffect, useRef } from 'react';
import type { Fault } from '../../../trade/given.ts';
import { onLeaving } from '../../device/leaving.ts';
import type { Tell } from '../../speak.ts';
import { Refused } from '../Refused.tsx';

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
  /** What was refused: what is said of the passphrase stands under it, and its box has the focus again. */
  readonly faults?: readonly Fault[];
  /** The field whose faults are meant. */
  readonly of?: string;
  readonly tell: Tell;
}

const NONE: readonly Fault[] = [];

export function Passphrase(props: Props) {
  const { id, label, hint, fresh = false, field, faults = NONE, of = 'passphrase', tell } = props;
  const own = faults.filter((fault) => fault.field === of);
  const refused = own.length > 0;
  // The button that was pressed is barred meanwhile and loses the focus: the reader would start at the top of the page.
  // biome-ignore lint/correctness/useExhaustiveDependencies: once for each refusal
  useEffect(() => {
    if (refused) field.box.current?.focus();
  }, [faults]);
  return (
    <div>
      <label htmlFor={id}>{label}</label>
      <input
        ref={field.box}
        id={id}
        type="password"
        autoComplete={fresh ? 'new-password' : 'off'}
        aria-invalid={refused ? true : undefined}
        aria-describedby={`${id}-hint ${id}-refused`}
        onInput={field.touched}
      />
      <p className="hint" id={`${id}-hint`}>
        {hint}
      </p>
      <Refused faults={own} id={`${id}-refused`} tell={tell} />
    </div>
  );
}

import type { FormEvent, ReactNode } from 'react';
import type { Fault } from '../../../trade/given.ts';
import type { Tell } from '../../speak.ts';
import { Arrow } from '../Arrow.tsx';
import { Came } from './Doing.tsx';
import { Passphrase, usePassphrase } from './Passphrase.tsx';

interface Props {
  /** Of the passphrase's field. */
  readonly id: string;
  /** What the signature will say; nothing while it cannot be said. */
  readonly says: string | undefined;
  /** Why nothing can be signed, in sentences. The passphrase is asked for only when there is none. */
  readonly cannot: readonly string[];
  readonly me: string;
  readonly doing: { readonly busy: boolean; readonly done: string; readonly faults: readonly Fault[] };
  readonly onSign: (passphrase: string) => void;
  readonly tell: Tell;
  readonly children?: ReactNode;
}

/** One sentence that says what will be signed, the passphrase, one button. */
export function SignForm({ id, says, cannot, me, doing, onSign, tell, children }: Props) {
  const pass = usePassphrase();
  const may = says !== undefined && cannot.length === 0;
  const sign = (event: FormEvent) => {
    event.preventDefault();
    if (may) onSign(pass.take());
  };
  return (
    <form onSubmit={sign} noValidate>
      {children}
      {says !== undefined && (
        <>
          <p className="label" id={`${id}-says`}>
            {tell('witness.says')}
          </p>
          <blockquote className="says" aria-labelledby={`${id}-says`}>
            {says}
          </blockquote>
        </>
      )}
      {may && (
        <Passphrase
          id={id}
          label={tell('witness.passphrase')}
          hint={tell('witness.passHint')}
          field={pass}
          faults={doing.faults}
          tell={tell}
        />
      )}
      <p className="message" id={`${id}-cannot`} role="status">
        {cannot.length > 0 && <strong>{tell('witness.cannot', { why: cannot.join(' ') })}</strong>}
      </p>
      <div className="buttons">
        <button
          type="submit"
          className="button"
          aria-describedby={`${id}-cannot`}
          disabled={!may || doing.busy}
        >
          {tell('witness.signAs', { me })} <Arrow />
        </button>
      </div>
      <Came doing={doing} without={['passphrase']} tell={tell} />
    </form>
  );
}

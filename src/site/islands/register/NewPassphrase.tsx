import type { Fault } from '../../../trade/given.ts';
import type { Tell } from '../../speak.ts';
import { Passphrase, usePassphrase } from './Passphrase.tsx';

/** A passphrase shorter than this is not taken (common practice, no source). */
const SHORTEST = 12;

/** A passphrase that is thought of now: written twice, so that no slip of the thumb locks its owner out. */
export function useNewPassphrase() {
  const [first, again] = [usePassphrase(), usePassphrase()];
  /** What stands in the two fields; they are empty afterwards. */
  const take = (tell: Tell): { readonly passphrase: string; readonly faults: readonly Fault[] } => {
    const [once, twice] = [first.take(), again.take()];
    return { passphrase: once, faults: passphraseFaults(once, twice, tell) };
  };
  return { first, again, take };
}

/** What is wrong with a new passphrase. */
function passphraseFaults(once: string, twice: string, tell: Tell): readonly Fault[] {
  const short = [...once].length < SHORTEST;
  if (!short && once === twice) return [];
  const message = tell(short ? 'register.passShort' : 'register.passDiffers');
  return [{ field: 'passphrase', message, todo: tell('register.passAnew') }];
}

interface Props {
  /** What the ids of the two fields begin with. */
  readonly id: string;
  readonly label: string;
  readonly fields: Pick<ReturnType<typeof useNewPassphrase>, 'first' | 'again'>;
  readonly faults: readonly Fault[];
  readonly tell: Tell;
}

export function NewPassphrase({ id, label, fields, faults, tell }: Props) {
  return (
    <>
      <Passphrase
        id={`${id}-pass`}
        label={label}
        hint={tell('register.passHint')}
        fresh
        field={fields.first}
        faults={faults}
        tell={tell}
      />
      <Passphrase
        id={`${id}-again`}
        label={tell('register.passAgain')}
        hint={tell('register.passTwice')}
        fresh
        field={fields.again}
        tell={tell}
      />
    </>
  );
}

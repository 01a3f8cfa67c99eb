import { useState } from 'react';
import { withdraw } from '../../../register/acts/withdraw.ts';
import type { KeyFile } from '../../../register/keyFile.ts';
import { GivenError } from '../../../trade/given.ts';
import { signHere } from '../../device/sign.ts';
import { shortKey } from '../../shortKey.ts';
import type { Tell } from '../../speak.ts';
import { TextField } from '../TextField.tsx';
import { useDoing } from './Doing.tsx';
import { emptyPassphrase } from './Passphrase.tsx';
import { SignForm } from './SignForm.tsx';

interface Props {
  readonly deviceKey: KeyFile;
  readonly entry: string;
  readonly me: string;
  readonly onDone: (entry: string) => Promise<void>;
  readonly tell: Tell;
}

/** Takes one entry back, for good, with the reason. */
export function TakeBack({ deviceKey, entry, me, onDone, tell }: Props) {
  const [why, setWhy] = useState('');
  const doing = useDoing(tell);
  const said = why.trim();
  const sign = async (passphrase: string) => {
    let written = '';
    const good = await doing.run(async () => {
      const unwritten = emptyPassphrase(passphrase, tell);
      if (unwritten.length > 0) throw new GivenError(unwritten);
      written = await signHere(deviceKey, passphrase, (register, how) =>
        withdraw(register, { entry, why: said }, how),
      );
      return '';
    });
    if (good) await onDone(written);
  };
  return (
    <section>
      <h3>{tell('ownEntries.takeBack')}</h3>
      <p>{tell('ownEntries.takeBackLine')}</p>
      <SignForm
        id="take-back-pass"
        says={
          said === '' ? undefined : tell('ownEntries.takeBackSays', { me, entry: shortKey(entry), why: said })
        }
        cannot={said === '' ? [tell('ownEntries.whyMissing')] : []}
        me={me}
        doing={doing}
        onSign={(passphrase) => void sign(passphrase)}
        tell={tell}
      >
        <TextField
          id="take-back-why"
          label={tell('ownEntries.why')}
          value={why}
          onValue={setWhy}
          hint={tell('ownEntries.whyHint')}
        />
      </SignForm>
    </section>
  );
}

import type { FormEvent } from 'react';
import type { SheetGrade } from '../../../practice/sheet.ts';
import type { Outcome } from '../../../register/bodies.ts';
import type { Fault } from '../../../trade/given.ts';
import type { SiteKey, Speak, Tell } from '../../speak.ts';
import { type Saw, signatureRows, signatureSays, type WitnessTask } from '../../witness.ts';
import { Arrow } from '../Arrow.tsx';
import { Refused } from '../Refused.tsx';
import { Came } from './Doing.tsx';
import { Passphrase, usePassphrase } from './Passphrase.tsx';

interface Props {
  readonly saw: Saw;
  /** The person as he is spoken of, his id within. */
  readonly spoken: string;
  readonly task: WitnessTask | undefined;
  readonly outcome: Outcome | null;
  readonly open: readonly SiteKey[];
  /** What the register refuses, as far as it stands beside no other field. */
  readonly faults: readonly Fault[];
  /** Everything that the register refuses: while there is any, nothing can be signed. */
  readonly refused: readonly Fault[];
  /** An id that nobody here has heard of before. */
  readonly newPerson: string | undefined;
  readonly grade: SheetGrade | undefined;
  readonly sheetNumber: number;
  /** Today, in the register's zone: the day it is entered. */
  readonly entered: string;
  readonly me: string;
  readonly doing: { readonly busy: boolean; readonly done: string; readonly faults: readonly Fault[] };
  readonly onSign: (passphrase: string) => void;
  readonly speak: Speak;
  readonly tell: Tell;
}

/** One sentence that says what will be signed, the passphrase, one button. */
export function SignSection(props: Props) {
  const { saw, spoken, task, outcome, open, faults, refused, newPerson, grade, sheetNumber, entered } = props;
  const { me, doing, onSign, speak, tell } = props;
  const pass = usePassphrase();
  const ready = outcome !== null && task !== undefined && open.length === 0;
  const stillOpen = tell('witness.open', { list: open.map((key) => tell(key)).join(', ') });
  const rows = ready ? signatureRows({ saw, task }, speak, tell) : [];
  const cannot = [
    ...refused.map(({ message, todo }) => tell('witness.cannotFor', { message, todo })),
    ...(ready ? [] : [stillOpen]),
  ];
  const may = ready && refused.length === 0;
  const sign = (event: FormEvent) => {
    event.preventDefault();
    onSign(pass.take());
  };
  return (
    <>
      <h2 className="view-title">{tell('witness.sign')}</h2>
      <p className="label" id="witness-says">
        {tell('witness.says')}
      </p>
      <blockquote className="says" aria-labelledby="witness-says">
        <p>
          {ready
            ? signatureSays({ saw, spoken, outcome, task, entered, me, grade, sheetNumber, speak, tell })
            : stillOpen}
        </p>
        {rows.length > 0 && (
          <>
            <p className="label">{tell('look.along')}</p>
            <ul>
              {rows.map((row) => (
                <li key={row}>{row}</li>
              ))}
            </ul>
          </>
        )}
      </blockquote>
      <Refused faults={faults} tell={tell} />
      <form onSubmit={sign} noValidate>
        {may && (
          <Passphrase
            id="witness-pass"
            label={tell('witness.passphrase')}
            hint={tell('witness.passHint')}
            field={pass}
            faults={doing.faults}
            tell={tell}
          />
        )}
        {newPerson !== undefined && <p className="note">{tell('witness.newHere', { id: newPerson })}</p>}
        <p className="message" id="witness-cannot" role="status">
          {cannot.length > 0 && <strong>{tell('witness.cannot', { why: cannot.join(' ') })}</strong>}
        </p>
        <div className="buttons">
          <button
            type="submit"
            className="button"
            aria-describedby="witness-cannot"
            disabled={!may || doing.busy}
          >
            {tell('witness.signAs', { me })} <Arrow />
          </button>
        </div>
        <Came doing={doing} without={['passphrase']} tell={tell} />
      </form>
    </>
  );
}

import { useId } from 'react';
import type { Bodies } from '../../../register/bodies.ts';
import type { Speak, Tell } from '../../speak.ts';
import { sawOf, signatureRows, signatureSays, type WitnessTask } from '../../witness.ts';

interface Props {
  /** As the person is spoken of. */
  readonly person: string;
  readonly body: Bodies['check'];
  /** The day it was entered. */
  readonly entered: string;
  readonly witness: string;
  readonly tasks: readonly WitnessTask[];
  readonly speak: Speak;
  readonly tell: Tell;
}

/** A check that stands in the register, in the words that its witness signed. */
export function FirstSigned({ person, body, entered, witness, tasks, speak, tell }: Props) {
  const id = useId();
  const task = tasks.find((one) => one.id === body.task);
  if (task === undefined) return null;
  const saw = sawOf(person, body);
  const { outcome, revision } = body;
  const asked = { saw, outcome, task, revision, entered, me: witness, grade: undefined, sheetNumber: 0 };
  const rows = signatureRows({ saw, task }, speak, tell);
  return (
    <>
      <p className="label" id={id}>
        {tell('look.signedBy', { witness })}
      </p>
      <blockquote className="says" aria-labelledby={id}>
        <p>{signatureSays({ ...asked, speak, tell })}</p>
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
    </>
  );
}

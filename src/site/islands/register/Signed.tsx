import type { RefObject } from 'react';
import { saveRegister } from '../../device/saveRegister.ts';
import { shortKey } from '../../shortKey.ts';
import type { Tell } from '../../speak.ts';
import { Arrow } from '../Arrow.tsx';

export interface SignedEntry {
  readonly entry: string;
  readonly person: string;
  readonly task: string;
  readonly state: string;
  /** Empty when nothing governs it. */
  readonly why: string;
  /** "seen 3 March 2026, entered 9 March 2026, from paper"; empty where there is nothing to tell apart. */
  readonly days: string;
  /** A second witness is still wanted. */
  readonly second: boolean;
}

interface Props {
  readonly signed: SignedEntry;
  readonly top: RefObject<HTMLElement | null>;
  readonly onAnother: () => void;
  readonly secondPage: string;
  readonly ownPage: string;
  readonly tell: Tell;
}

/** After the signature: the entry's short id, where the person stands now, and the way off this device. */
export function Signed({ signed, top, onAnother, secondPage, ownPage, tell }: Props) {
  const { entry, person, task, state, why, days, second } = signed;
  return (
    <>
      <section className="answer" role="status" ref={top} tabIndex={-1}>
        <p className="label">{tell('witness.signed', { entry: shortKey(entry) })}</p>
        <p className="huge">
          {why === ''
            ? tell('witness.stands', { person, task, state })
            : tell('witness.standsWhy', { person, task, state, why })}
        </p>
        {days !== '' && <p>{tell('look.days', { days })}</p>}
      </section>
      <h2 className="view-title">{tell('look.next')}</h2>
      <p>{tell('witness.carryLine')}</p>
      {second && (
        <p>
          {tell('look.nextSecond')} <a href={secondPage}>{tell('look.toSecond')}</a>
        </p>
      )}
      <div className="buttons">
        <button type="button" className="button" onClick={() => void saveRegister()}>
          {tell('witness.carry')} <Arrow />
        </button>
      </div>
      <p className="way">
        <button type="button" className="as-link offer" onClick={onAnother}>
          {tell('witness.another')}
        </button>
      </p>
      <p>
        <a className="offer" href={ownPage}>
          {tell('look.toOwn')}
        </a>
      </p>
    </>
  );
}

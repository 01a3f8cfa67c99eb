import { useState } from 'react';
import type { Tell } from '../../speak.ts';
import { Arrow } from '../Arrow.tsx';

interface Props {
  readonly count: number;
  readonly onClear: () => void;
  readonly tell: Tell;
}

/** Clearing, with a second look: what goes is said before anything does. */
export function ClearTries({ count, onClear, tell }: Props) {
  const [looking, setLooking] = useState(false);
  if (!looking)
    return (
      <div className="buttons">
        <button type="button" className="button second" onClick={() => setLooking(true)}>
          {tell('keptPractice.clearButton')} <Arrow />
        </button>
      </div>
    );
  return (
    <>
      <p role="status">{tell(count === 1 ? 'keptPractice.lookOne' : 'keptPractice.look', { count })}</p>
      <div className="buttons">
        <button
          type="button"
          className="button second"
          onClick={() => {
            setLooking(false);
            onClear();
          }}
        >
          {tell(count === 1 ? 'keptPractice.sureOne' : 'keptPractice.sure', { count })} <Arrow />
        </button>
      </div>
      <p className="way">
        <button type="button" className="as-link" onClick={() => setLooking(false)}>
          {tell('keptPractice.keep')}
        </button>
      </p>
    </>
  );
}

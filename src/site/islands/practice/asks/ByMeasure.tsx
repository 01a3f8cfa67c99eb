import { useId, useState } from 'react';
import type { ResolvedRun } from '../../../../run/resolved.ts';
import { inches, type Ticks } from '../../../../trade/length.ts';
import type { Speak, Tell } from '../../../speak.ts';
import { FeetInches } from '../../FeetInches.tsx';

interface Props {
  readonly resolved: ResolvedRun;
  /** What is set down, as its name goes in the heading. */
  readonly what: string;
  readonly onSet: (leg: string, at: number) => void;
  readonly tell: Tell;
  readonly speak: Speak;
}

/** Sets one down by its measure along a leg: for places between the marks, to the sixteenth. */
export function ByMeasure({ resolved, what, onSet, tell, speak }: Props) {
  const id = useId();
  const [leg, setLeg] = useState(resolved.legs[0]?.leg ?? '');
  const [at, setAt] = useState<Ticks | null>(null);
  /** Raised when one was set down, so that the fields are empty again. */
  const [fresh, setFresh] = useState(0);
  const length = resolved.byId.get(leg)?.length;
  const off = at !== null && length !== undefined && at > length;
  return (
    <details className="opens by-measure">
      <summary>{tell('asks.byMeasure', { what })}</summary>
      <div>
        <label htmlFor={`${id}-leg`}>{tell('asks.leg')}</label>
        <select id={`${id}-leg`} value={leg} onChange={(event) => setLeg(event.currentTarget.value)}>
          {resolved.legs.map((one) => (
            <option key={one.leg} value={one.leg}>
              {one.leg}
            </option>
          ))}
        </select>
        <FeetInches
          key={fresh}
          legend={tell('asks.fromFirst')}
          initial={null}
          onReading={(reading) => setAt(reading.read === 'length' ? reading.length : null)}
          units="own"
          tell={tell}
          speak={speak}
        />
        {off && (
          <p className="message">
            <strong>{tell('asks.offLeg')}</strong>
          </p>
        )}
        <button
          type="button"
          className="button second small"
          disabled={at === null || off}
          onClick={() => {
            if (at === null) return;
            onSet(leg, inches(at));
            setFresh(fresh + 1);
          }}
        >
          {tell('asks.setHere')}
        </button>
      </div>
    </details>
  );
}

import { useState } from 'react';
import type { Fault } from '../../../trade/given.ts';
import { attempt } from '../../refusals.ts';
import type { Tell } from '../../speak.ts';
import { Refused } from '../Refused.tsx';

/** One act at a time with what came of it: a sentence when it was done, the faults when it was refused. */
export function useDoing(tell: Tell) {
  const [busy, setBusy] = useState(false);
  const [done, setDone] = useState('');
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const run = async (act: () => Promise<string>): Promise<boolean> => {
    setBusy(true);
    setDone('');
    setFaults([]);
    const came = await attempt(tell, act);
    setBusy(false);
    if (came.good) setDone(came.value);
    else setFaults(came.faults);
    return came.good;
  };
  return { busy, done, faults, run };
}

interface Props {
  readonly doing: { readonly busy: boolean; readonly done: string; readonly faults: readonly Fault[] };
  /** Fields whose faults stand elsewhere. */
  readonly without?: readonly string[];
  readonly tell: Tell;
}

export function Came({ doing, without = [], tell }: Props) {
  const rest = doing.faults.filter(({ field }) => !without.includes(field));
  return (
    <>
      <p className="status-line" role="status">
        {doing.busy ? tell('witness.signing') : doing.done}
      </p>
      <Refused faults={rest} tell={tell} />
    </>
  );
}

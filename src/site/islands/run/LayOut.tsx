import { useEffect, useRef, useState } from 'react';
import type { LayoutResult } from '../../../run/layout/layout.ts';
import type { Run } from '../../../run/types.ts';
import type { Fault } from '../../../trade/given.ts';
import { standing } from '../../run/laid.ts';
import type { LayoutAsked, LayoutTold } from '../../run/layoutWorker.ts';
import { type Long, longAs } from '../../run/lengths.ts';
import { findingPlace } from '../../run/said.ts';
import type { RunData } from '../../run/workOut.ts';
import type { Settings } from '../../settings.ts';
import type { Speak, Tell } from '../../speak.ts';
import { Arrow } from '../Arrow.tsx';
import { Refused } from '../Refused.tsx';

interface Props {
  readonly run: Run;
  readonly data: RunData;
  readonly onLaid: (run: Run) => void;
  readonly settings: Settings;
  readonly tell: Tell;
  readonly speak: Speak;
}

/** Supports, splices, anchors and jumpers chosen for the run, in a worker that can be stopped. */
export function LayOut({ run, data, onLaid, settings, tell, speak }: Props) {
  const worker = useRef<Worker | null>(null);
  const [busy, setBusy] = useState(false);
  const [found, setFound] = useState<{ readonly result: LayoutResult; readonly on: Run } | null>(null);
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const [failed, setFailed] = useState(false);
  const stop = () => {
    worker.current?.terminate();
    worker.current = null;
    setBusy(false);
  };
  useEffect(() => () => worker.current?.terminate(), []);
  const begin = () => {
    stop();
    setFound(null);
    setFaults([]);
    setFailed(false);
    setBusy(true);
    const own = new Worker(new URL('../../run/layoutWorker.ts', import.meta.url), { type: 'module' });
    worker.current = own;
    own.onmessage = ({ data: told }: MessageEvent<LayoutTold>) => {
      stop();
      if (told.told === 'faults') return setFaults(told.faults);
      // A refusal speaks of the run that was asked for, a lay-out of the run that it made.
      setFound({ result: told.result, on: told.result.run ?? run });
      if (told.result.run !== null) onLaid(told.result.run);
    };
    own.onerror = () => {
      stop();
      setFailed(true);
    };
    own.postMessage({ run, data } satisfies LayoutAsked);
  };
  const stands = found === null ? 'gone' : standing(run, found.on);
  const result = stands === 'stands' ? (found?.result ?? null) : null;
  const stale = stands === 'stale' && found?.result.run != null;
  return (
    <section className="lay-out off-paper">
      <div className="buttons">
        {busy ? (
          <button type="button" className="button second" onClick={stop}>
            {tell('yourRun.stop')} <Arrow />
          </button>
        ) : (
          <button type="button" className="button second" onClick={begin}>
            {tell('yourRun.layOut')} <Arrow />
          </button>
        )}
      </div>
      <div aria-live="polite">
        {busy && <p>{tell('yourRun.laying')}</p>}
        {failed && <p>{tell('yourRun.layFailed')}</p>}
        {result !== null && <Laid result={result} long={longAs(settings, tell)} tell={tell} speak={speak} />}
        <Refused faults={faults} tell={tell} />
        {stale && !busy && (
          <p className="note">
            <strong>{tell('yourRun.layStale')}</strong>
          </p>
        )}
        {result === null && !busy && <p className="hint">{tell('yourRun.layHint')}</p>}
      </div>
    </section>
  );
}

function Laid({
  result,
  long,
  tell,
  speak,
}: {
  readonly result: LayoutResult;
  readonly long: Long;
  readonly tell: Tell;
  readonly speak: Speak;
}) {
  if (result.run === null) {
    const { refused } = result;
    return (
      <p className="message">
        <strong>
          {tell('yourRun.layRefused', { why: speak(refused.say), place: findingPlace(refused, tell, long) })}
        </strong>
      </p>
    );
  }
  const { proven, bound } = result;
  return (
    <p>
      {tell('yourRun.laid', { supports: bound.supports })}{' '}
      {tell(proven.stock ? 'yourRun.laidStock' : 'yourRun.laidBound', { stock: bound.stock })}
    </p>
  );
}

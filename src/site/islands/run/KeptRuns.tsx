import { useState } from 'react';
import type { KeptRun } from '../../device/runs.ts';
import type { Tell } from '../../speak.ts';
import { Arrow } from '../Arrow.tsx';
import { type Example, Examples } from './Examples.tsx';

interface Props {
  readonly kept: readonly KeptRun[];
  readonly open: number | null;
  readonly examples: readonly Example[];
  readonly onOpen: (id: number) => void;
  readonly onNew: () => void;
  readonly onCopy: () => void;
  readonly onRemove: (id: number) => void;
  readonly onExample: (example: Example) => void;
  readonly tell: Tell;
}

/** The runs of this device: opened, begun, copied, removed by a second press. */
export function KeptRuns({ kept, open, examples, onOpen, onNew, onCopy, onRemove, onExample, tell }: Props) {
  const [sure, setSure] = useState<number | null>(null);
  const called = ({ file, id }: KeptRun) =>
    [file.number, file.name].filter((text) => text !== '').join(' · ') || tell('yourRun.unnamed', { id });
  return (
    <details className="opens">
      <summary>
        {tell('yourRun.kept')} <b>{kept.length}</b>
      </summary>
      <div>
        <ul className="kept-runs">
          {kept.map((one) => (
            <li key={one.id}>
              <button
                type="button"
                className="as-link offer"
                aria-current={one.id === open ? 'true' : undefined}
                onClick={() => onOpen(one.id)}
              >
                {called(one)}
              </button>
              <button
                type="button"
                className="button second small"
                onClick={() => {
                  if (sure === one.id) onRemove(one.id);
                  setSure(sure === one.id ? null : one.id);
                }}
              >
                {tell(sure === one.id ? 'yourRun.removeSure' : 'yourRun.remove', { name: called(one) })}
              </button>
            </li>
          ))}
        </ul>
        <div className="buttons">
          <button type="button" className="button second" onClick={onNew}>
            {tell('yourRun.newRun')} <Arrow />
          </button>
          <button type="button" className="button second" onClick={onCopy}>
            {tell('yourRun.copyRun')} <Arrow />
          </button>
        </div>
        {examples.length > 0 && (
          <>
            <h3>{tell('yourRun.examples')}</h3>
            <Examples examples={examples} onExample={onExample} />
          </>
        )}
      </div>
    </details>
  );
}

import type { ReactElement } from 'react';
import { faultsFrom } from '../../refusals.ts';
import type { Tell } from '../../speak.ts';
import { Refused } from '../Refused.tsx';
import { Guard } from './Guard.tsx';
import type { Device } from './useDevice.ts';

interface Asked {
  readonly device: Device | undefined;
  readonly failed: unknown;
  readonly answerPage: string;
  readonly registerPage: string;
  readonly tell: Tell;
}

/** What stands on a page that signs while this device lacks what signing wants; `undefined` once nothing is lacking. */
export function lacking({ device, failed, answerPage, registerPage, tell }: Asked): ReactElement | undefined {
  if (failed !== undefined) return <Refused faults={faultsFrom(failed, tell)} tell={tell} />;
  if (device === undefined) return <p role="status">{tell('register.reading')}</p>;
  if (device.answering !== undefined)
    return <Guard sheet={device.answering} answerPage={answerPage} tell={tell} />;
  if (device.key !== undefined && device.opened !== undefined) return undefined;
  const lacks = device.key === undefined ? 'noKey' : 'noRegister';
  return (
    <div className="nothing">
      <p>
        <strong>{tell(`witness.${lacks}`)}</strong>
      </p>
      <p>{tell(`witness.${lacks}Line`)}</p>
      <p>
        <a className="offer" href={registerPage}>
          {tell('witness.toRegister')}
        </a>
      </p>
    </div>
  );
}

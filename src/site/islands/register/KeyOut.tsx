import { useState } from 'react';
import { shortKey } from '../../shortKey.ts';
import type { Tell } from '../../speak.ts';
import { HandOut } from './HandOut.tsx';
import { useDrawer } from './useCodes.ts';

interface Props {
  readonly publicKey: string;
  readonly tell: Tell;
}

/** The public half of this device's key for the owner's device: as text, link and code. This page takes it there. */
export function KeyOut({ publicKey, tell }: Props) {
  const [shown, setShown] = useState(false);
  useDrawer();
  const key = shortKey(publicKey);
  return (
    <details className="opens" onToggle={(event) => setShown(event.currentTarget.open)}>
      <summary>{tell('handing.showKey')}</summary>
      <div>
        {shown && (
          <>
            <p className="label">{tell('handing.keyText')}</p>
            <p className="wrap-id">{publicKey}</p>
            <HandOut
              mark="key"
              json={{ v: 1, kind: 'public-key', publicKey }}
              page={window.location.pathname}
              label={tell('handing.keyCode', { key })}
              opens={tell('handing.keyOpens')}
              tell={tell}
            />
          </>
        )}
      </div>
    </details>
  );
}

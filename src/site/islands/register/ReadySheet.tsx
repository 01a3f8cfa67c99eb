import { useState } from 'react';
import { deviceName } from '../../../register/shapes.ts';
import type { About } from '../../sheetAbout.ts';
import type { Tell } from '../../speak.ts';
import { Arrow } from '../Arrow.tsx';
import { TextField } from '../TextField.tsx';

interface Props {
  readonly about: About;
  readonly task: { readonly id: string; readonly name: string };
  readonly device: string;
  readonly onDevice: (name: string) => void;
  readonly onBegin: () => void;
  readonly onAway: () => void;
  readonly tell: Tell;
}

/** What was set, and the name that this device answers under. */
export function ReadySheet({ about, task, device, onDevice, onBegin, onAway, tell }: Props) {
  const [tried, setTried] = useState(false);
  const bad = deviceName(device.trim()) !== undefined;
  return (
    <form
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        setTried(true);
        if (!bad) onBegin();
      }}
    >
      <section className="answer" role="status">
        <p className="label">
          {tell(about.draws === 1 ? 'answerPage.readyLineOne' : 'answerPage.readyLine', {
            ...about,
            ...task,
          })}
        </p>
        <p className="huge">{tell('answerPage.ready', about)}</p>
      </section>
      <TextField
        id="answer-device"
        label={tell('answerPage.device')}
        value={device}
        onValue={onDevice}
        hint={tell('answerPage.deviceHint')}
        fault={tried && bad ? tell('answerPage.badDevice') : undefined}
        autoCapitalize="none"
      />
      <div className="buttons">
        <button className="button" type="submit">
          {tell('answerPage.begin')} <Arrow />
        </button>
      </div>
      <p className="way">
        <button type="button" className="as-link offer" onClick={onAway}>
          {tell('answerPage.away')}
        </button>
      </p>
    </form>
  );
}

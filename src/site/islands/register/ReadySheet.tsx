import { useState } from 'react';
import { deviceName } from '../../../register/shapes.ts';
import type { About } from '../../sheetAbout.ts';
import type { Tell } from '../../speak.ts';
import { Arrow } from '../Arrow.tsx';

interface Props {
  readonly about: About;
  readonly task: { readonly id: string; readonly name: string };
  readonly device: string;
  readonly onDevice: (name: string) => void;
  readonly onBegin: () => void;
  readonly tell: Tell;
}

/** What was set, and the name that this device answers under. */
export function ReadySheet({ about, task, device, onDevice, onBegin, tell }: Props) {
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
        <p className="label">{tell('answerPage.readyLine', { ...about, ...task })}</p>
        <p className="huge">{tell('answerPage.ready', about)}</p>
      </section>
      <label htmlFor="answer-device">{tell('answerPage.device')}</label>
      <input
        id="answer-device"
        type="text"
        autoComplete="off"
        autoCapitalize="none"
        value={device}
        aria-invalid={tried && bad ? true : undefined}
        aria-describedby="answer-device-hint"
        onChange={(event) => onDevice(event.currentTarget.value)}
      />
      <p className="hint" id="answer-device-hint">
        {tried && bad ? <strong>{tell('answerPage.badDevice')}</strong> : tell('answerPage.deviceHint')}
      </p>
      <div className="buttons">
        <button className="button" type="submit">
          {tell('answerPage.begin')} <Arrow />
        </button>
      </div>
    </form>
  );
}

import { useEffect, useState } from 'react';
import { EDITIONS, type Edition } from '../../trade/editions.ts';
import { measureText, tape, temperature } from '../calculators/measure.ts';
import { keepSettings } from '../device/settings.ts';
import { degreeWays, type Kept, metricWays, nothingKept, settingsOf } from '../settings.ts';
import { teller, type WordTable } from '../speak.ts';
import { useKept } from './useSettings.ts';

interface Props {
  readonly words: WordTable;
  /** Edition of the code that the works goes by. */
  readonly works: Edition;
}

/** How figures are shown on this device: kept at every choice, with a sample of what it does. */
export default function SettingsSheet({ words, works }: Props) {
  const tell = teller(words);
  const kept = useKept();
  const [settings, setSettings] = useState(nothingKept);
  const [keeps, setKeeps] = useState<boolean>();
  useEffect(() => setSettings(kept), [kept]);
  const set = (part: Partial<Kept>) => {
    const next = { ...settings, ...part };
    setSettings(next);
    setKeeps(keepSettings(next));
  };
  return (
    <form className="off-paper" onSubmit={(event) => event.preventDefault()}>
      <fieldset>
        <legend>{tell('settingsSheet.metric')}</legend>
        {metricWays.map((metric) => (
          <label className="choice" key={metric}>
            <input
              type="radio"
              name="metric"
              autoComplete="off"
              checked={settings.metric === metric}
              onChange={() => set({ metric })}
            />
            <i />
            {tell(`settingsSheet.${metric}`)}
          </label>
        ))}
        <p className="hint">{tell('settingsSheet.tape')}</p>
      </fieldset>
      <fieldset>
        <legend>{tell('settingsSheet.degrees')}</legend>
        {degreeWays.map((degrees) => (
          <label className="choice" key={degrees}>
            <input
              type="radio"
              name="degrees"
              autoComplete="off"
              checked={settings.degrees === degrees}
              onChange={() => set({ degrees })}
            />
            <i />
            {tell(`settingsSheet.${degrees}`)}
          </label>
        ))}
      </fieldset>
      <fieldset>
        <legend>{tell('settingsSheet.edition')}</legend>
        {[null, ...[...EDITIONS].reverse()].map((edition) => (
          <label className="choice" key={edition}>
            <input
              type="radio"
              name="edition"
              autoComplete="off"
              checked={settings.edition === edition}
              onChange={() => set({ edition })}
            />
            <i />
            {edition ?? tell('settingsSheet.works', { edition: works })}
          </label>
        ))}
        <p className="hint">{tell('settingsSheet.editionHint')}</p>
      </fieldset>
      <p aria-live="polite">
        {keeps !== undefined && (
          <strong>{tell(keeps ? 'settingsSheet.kept' : 'settingsSheet.notKept')} </strong>
        )}
        {tell('settingsSheet.sample', {
          length: measureText(tape(147.5), settingsOf(settings, works), tell),
          temperature: measureText(temperature(50), settingsOf(settings, works), tell),
        })}
      </p>
    </form>
  );
}

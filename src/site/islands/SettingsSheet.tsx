import { useEffect, useState } from 'react';
import { EDITIONS } from '../../trade/fillTables.ts';
import { measureText, tape, temperature } from '../calculators/measure.ts';
import { keepSettings } from '../device/settings.ts';
import { degreeWays, metricWays, type Settings, usual } from '../settings.ts';
import { teller, type WordTable } from '../speak.ts';
import { useSettings } from './useSettings.ts';

/** How figures are shown on this device: kept at every choice, with a sample of what it does. */
export default function SettingsSheet({ words }: { readonly words: WordTable }) {
  const tell = teller(words);
  const kept = useSettings();
  const [settings, setSettings] = useState(usual);
  const [keeps, setKeeps] = useState<boolean>();
  useEffect(() => setSettings(kept), [kept]);
  const set = (part: Partial<Settings>) => {
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
        {[...EDITIONS].reverse().map((edition) => (
          <label className="choice" key={edition}>
            <input
              type="radio"
              name="edition"
              autoComplete="off"
              checked={settings.edition === edition}
              onChange={() => set({ edition })}
            />
            <i />
            {edition}
          </label>
        ))}
        <p className="hint">{tell('settingsSheet.editionHint')}</p>
      </fieldset>
      <p aria-live="polite">
        {keeps !== undefined && (
          <strong>{tell(keeps ? 'settingsSheet.kept' : 'settingsSheet.notKept')} </strong>
        )}
        {tell('settingsSheet.sample', {
          length: measureText(tape(147.5), settings, tell),
          temperature: measureText(temperature(50), settings, tell),
        })}
      </p>
    </form>
  );
}

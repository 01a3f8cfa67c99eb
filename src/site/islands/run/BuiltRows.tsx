import { useState } from 'react';
import { type Built, type BuiltBeside, builtBeside, type RunFile } from '../../../run/edit/file.ts';
import type { ResolvedRun } from '../../../run/resolved.ts';
import { type Ticks, ticks } from '../../../trade/length.ts';
import { dayText } from '../../dates.ts';
import { type Long, longAs } from '../../run/lengths.ts';
import type { Settings } from '../../settings.ts';
import type { Speak, Tell } from '../../speak.ts';
import { Arrow } from '../Arrow.tsx';
import { TextField } from '../TextField.tsx';
import { LengthField } from './LengthField.tsx';

interface Props {
  readonly resolved: ResolvedRun;
  readonly file: RunFile;
  /** `YYYY-MM-DD` on this device. */
  readonly today: string;
  readonly onBuilt: (built: readonly Built[], piece: string) => void;
  readonly settings: Settings;
  readonly tell: Tell;
  readonly speak: Speak;
}

/** As built beside as planned: what the tape showed on each piece that was cut, by whom, when. */
export function BuiltRows({ resolved, file, today, onBuilt, settings, tell, speak }: Props) {
  const long = longAs(settings, tell);
  const pieces = resolved.legs.flatMap((leg) => leg.pieces);
  const { rows, strays } = builtBeside(pieces, file.built);
  const set = (piece: string, built: Built | null) =>
    onBuilt([...file.built.filter((one) => one.piece !== piece), ...(built === null ? [] : [built])], piece);
  const by = file.built.at(-1)?.by ?? '';
  return (
    <>
      <p className="hint">{tell('yourRun.builtHint')}</p>
      {rows.map((row) => (
        <details className="opens inner" key={row.piece.id}>
          <summary>
            {row.piece.id}{' '}
            <span className="names">{tell('yourRun.planned', { cut: long(row.piece.cut) })}</span>
            <b>{row.off === null ? tell('yourRun.notCut') : offWords(row.off, tell, long)}</b>
          </summary>
          <div>
            {row.built !== null && (
              <p>
                {tell('yourRun.cutAs', {
                  cut: long(row.built.cut),
                  by: row.built.by,
                  day: dayText(tell, row.built.on),
                })}
              </p>
            )}
            <OneBuilt
              row={row}
              by={by}
              today={today}
              onBuilt={(b) => set(row.piece.id, b)}
              tell={tell}
              speak={speak}
            />
          </div>
        </details>
      ))}
      {strays.map(({ piece, cut, by: who, on }) => (
        <p className="note" key={piece}>
          {tell('yourRun.stray', { piece, cut: long(cut), by: who, day: dayText(tell, on) })}
        </p>
      ))}
    </>
  );
}

/** `as planned`, `1/16" long`, `1/8" short`. */
export function offWords(off: Ticks, tell: Tell, long: Long): string {
  if (off === 0) return tell('yourRun.asPlanned');
  return tell(off > 0 ? 'yourRun.long' : 'yourRun.short', { off: long(ticks(Math.abs(off))) });
}

interface OneProps {
  readonly row: BuiltBeside;
  readonly by: string;
  readonly today: string;
  readonly onBuilt: (built: Built | null) => void;
  readonly tell: Tell;
  readonly speak: Speak;
}

function OneBuilt({ row, by, today, onBuilt, tell, speak }: OneProps) {
  const { piece, built } = row;
  const [cut, setCut] = useState<Ticks | undefined>(built?.cut);
  const [unread, setUnread] = useState(false);
  const [who, setWho] = useState(built?.by ?? by);
  const [on, setOn] = useState(built?.on ?? today);
  const [said, setSaid] = useState('');
  const keep = () => {
    if (unread || cut === undefined || cut <= 0) return setSaid(tell('yourRun.giveCut'));
    if (who.trim() === '') return setSaid(tell('yourRun.giveWho'));
    if (!/^\d{4}-\d{2}-\d{2}$/.test(on) || Number.isNaN(Date.parse(on)))
      return setSaid(tell('yourRun.giveDay'));
    setSaid('');
    onBuilt({ piece: piece.id, cut, by: who.trim(), on });
  };
  return (
    <div className="fields run-fields">
      <LengthField
        legend={tell('yourRun.tapeShows')}
        value={cut}
        onValue={setCut}
        onUnread={setUnread}
        tell={tell}
        speak={speak}
      />
      <TextField id={`by-${piece.id}`} label={tell('yourRun.by')} value={who} onValue={setWho} />
      <TextField id={`on-${piece.id}`} label={tell('yourRun.day')} value={on} onValue={setOn} />
      {said !== '' && (
        <p className="message" role="alert">
          <strong>{said}</strong>
        </p>
      )}
      <p>
        <button type="button" className="button second" onClick={keep}>
          {tell('yourRun.writeIt')} <Arrow />
        </button>
      </p>
      {built !== null && (
        <p>
          <button type="button" className="as-link offer" onClick={() => onBuilt(null)}>
            {tell('yourRun.takeOff', { what: piece.id })}
          </button>
        </p>
      )}
    </div>
  );
}

import type { RunFile } from '../../../run/edit/file.ts';
import type { WorkedRun, World } from '../../run/workOut.ts';
import type { Settings } from '../../settings.ts';
import type { Speak, Tell } from '../../speak.ts';
import { Arrow } from '../Arrow.tsx';
import { Figure } from '../Figure.tsx';
import { Answer } from './Answer.tsx';
import { Comes } from './Comes.tsx';
import { Findings } from './Findings.tsx';
import type { Figures } from './useWorkedRun.ts';

interface Props {
  readonly file: RunFile;
  readonly worked: WorkedRun;
  readonly drawn: Figures;
  readonly world: World;
  readonly settings: Settings;
  readonly onKeep: () => void;
  readonly onLeave: () => void;
  readonly tell: Tell;
  readonly speak: Speak;
}

/** A run that came in a link: shown, and kept only when that is asked for. */
export function SharedRun({ file, worked, drawn, world, settings, onKeep, onLeave, tell, speak }: Props) {
  return (
    <div className="run-screen">
      <Answer file={file} worked={worked} settings={settings} tell={tell} />
      <div className="buttons">
        <button type="button" className="button" onClick={onKeep}>
          {tell('yourRun.keepIt')} <Arrow />
        </button>
        <button type="button" className="button second" onClick={onLeave}>
          {tell('yourRun.leaveIt')} <Arrow />
        </button>
      </div>
      <p className="note">{tell('yourRun.sharedNote')}</p>
      <Figure drawings={drawn.isometric} caption={tell('yourRun.caption')} />
      <Findings worked={worked} drawings={drawn.isometric} settings={settings} tell={tell} speak={speak} />
      <Comes worked={worked} file={file} world={world} settings={settings} tell={tell} speak={speak} />
    </div>
  );
}

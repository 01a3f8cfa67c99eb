import { helps, manners, type Outcome, outcomes } from '../../../register/bodies.ts';
import type { Tell } from '../../speak.ts';
import { type Bar, isWhole, type Saw } from '../../witness.ts';
import { Choices } from './Choices.tsx';

interface Props {
  readonly saw: Saw;
  readonly outcome: Outcome | null;
  /** Why Shown is not offered; empty when it is. */
  readonly barred: readonly Bar[];
  readonly onChange: (part: Partial<Saw>) => void;
  readonly initials: string;
  readonly tell: Tell;
}

const yesNo = ['yes', 'no'] as const;

/** How it was done, whether in sight, whether stopped, and what came of it. */
export function HowDone({ saw, outcome, barred, onChange, initials, tell }: Props) {
  const { manner, help, inSight, stopped } = saw;
  const practice = manner !== null && help !== null && inSight !== null && !isWhole(saw);
  return (
    <>
      <h2 className="view-title">{tell('witness.how')}</h2>
      <Choices
        legend={tell('witness.manner')}
        options={manners.map((value) => ({ value, text: tell(`witness.${value}`) }))}
        value={manner}
        onValue={(value) => onChange({ manner: value })}
        initials={initials}
      />
      <Choices
        legend={tell('witness.help')}
        options={helps.map((value) => ({ value, text: tell(`witness.${value}`) }))}
        value={help}
        onValue={(value) => onChange({ help: value })}
        initials={initials}
      />
      <Choices
        legend={tell('witness.sight')}
        options={yesNo.map((value) => ({ value, text: tell(`witness.${value}`) }))}
        value={inSight === null ? null : inSight ? 'yes' : 'no'}
        onValue={(value) => onChange({ inSight: value === 'yes' })}
        initials={initials}
      />
      <fieldset className="choices">
        <legend>{tell('witness.stop')}</legend>
        <div>
          <label className="choice">
            <input
              type="checkbox"
              checked={stopped}
              onChange={(event) => onChange({ stopped: event.currentTarget.checked })}
            />
            <i aria-hidden="true">
              <span>{initials}</span>
            </i>
            {tell('witness.stopped')}
          </label>
        </div>
        <p className="note">{tell('witness.stopLine')}</p>
      </fieldset>
      <Choices
        legend={tell('witness.outcome')}
        describedBy="witness-barred"
        options={outcomes.map((value) => ({
          value,
          text: tell(`witness.${value}`),
          off: value === 'shown' && barred.length > 0,
        }))}
        value={outcome}
        onValue={(value) => onChange({ outcome: value })}
        initials={initials}
      />
      <p className="note" id="witness-barred">
        {barred.length > 0 &&
          [tell('witness.barred'), ...barred.map((bar) => tell(`witness.bar-${bar}`))].join(' ')}
        {barred.length === 0 && practice && tell('witness.practiceOnly')}
      </p>
    </>
  );
}

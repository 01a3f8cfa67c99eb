import { isHeading, revisionOn } from '../../../register/taskMap.ts';
import type { Fault } from '../../../trade/given.ts';
import { type Names, spokenName } from '../../people.ts';
import type { Speak, Tell } from '../../speak.ts';
import { pairName, valueName } from '../../variants.ts';
import type { Saw, WitnessTask } from '../../witness.ts';
import { Refused } from '../Refused.tsx';
import { TextField } from '../TextField.tsx';

interface Props {
  readonly saw: Saw;
  /** The day seen as it stands: today until another is written. */
  readonly on: string;
  readonly today: string;
  readonly zone: string;
  readonly tasks: readonly WitnessTask[];
  /** Ids that the register or the names file knows. */
  readonly known: readonly string[];
  /** The id that is written is one of nobody known. */
  readonly isNew: boolean;
  readonly names: Names;
  readonly faults: readonly Fault[];
  readonly onChange: (part: Partial<Saw>) => void;
  readonly speak: Speak;
  readonly tell: Tell;
}

/** Who, which task in which variant, and the day it was seen. */
export function WhoAndTask(props: Props) {
  const { saw, on, today, zone, tasks, known, isNew, names, faults, onChange, speak, tell } = props;
  const task = tasks.find(({ id }) => id === saw.task);
  const choosePair = (pair: string, value: string) => {
    const { [pair]: _, ...others } = saw.variant;
    onChange({ variant: value === '' ? others : { ...others, [pair]: value } });
  };
  return (
    <div className="fields">
      <TextField
        id="witness-who"
        label={tell('witness.who')}
        value={saw.person}
        onValue={(person) => onChange({ person })}
        list="witness-known"
        aria-describedby="witness-who-refused"
        autoCapitalize="none"
      >
        <datalist id="witness-known">
          {known.map((id) => (
            <option key={id} value={id}>
              {spokenName(id, names)}
            </option>
          ))}
        </datalist>
        <p className="hint" role="status">
          {isNew && tell('witness.newHere', { id: saw.person.trim() })}
        </p>
        <Refused faults={faults} fields={['person']} id="witness-who-refused" tell={tell} />
      </TextField>
      <div>
        <label htmlFor="witness-task">{tell('witness.task')}</label>
        <select
          id="witness-task"
          value={saw.task}
          onChange={(event) => onChange({ task: event.currentTarget.value, variant: {}, points: {} })}
        >
          <option value="">{tell('witness.choose')}</option>
          {tasks
            .filter((one) => !isHeading(one))
            .map((one) => (
              <option key={one.id} value={one.id}>
                {tell('witness.taskOption', {
                  id: one.id,
                  name: speak({ say: `${one.id}.name` }),
                  revision: revisionOn(one, on),
                })}
              </option>
            ))}
        </select>
        <Refused faults={faults} fields={['task', 'key']} tell={tell} />
      </div>
      {Object.entries(task?.variants ?? {}).map(([pair, values]) => (
        <div key={pair}>
          <label htmlFor={`witness-${pair}`}>{pairName(pair, speak)}</label>
          <select
            id={`witness-${pair}`}
            value={saw.variant[pair] ?? ''}
            aria-describedby={`witness-${pair}-open`}
            onChange={(event) => choosePair(pair, event.currentTarget.value)}
          >
            <option value="">{tell('witness.choose')}</option>
            {values.map((value) => (
              <option key={value} value={value}>
                {valueName(pair, value, speak)}
              </option>
            ))}
          </select>
          <p className="hint" id={`witness-${pair}-open`}>
            {saw.variant[pair] === undefined && tell('witness.pairOpen')}
          </p>
        </div>
      ))}
      <TextField
        id="witness-day"
        label={tell('witness.on')}
        value={on}
        onValue={(day) => onChange({ on: day })}
        hint={tell('witness.onHint', { zone, today })}
      >
        <Refused faults={faults} fields={['on', 'at']} tell={tell} />
      </TextField>
    </div>
  );
}

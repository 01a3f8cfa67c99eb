import { places, type Shift, shifts } from '../../../register/circumstances.ts';
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
  /** Whether the key here is appointed for a task on the day seen. */
  readonly mayCheck: (task: string) => boolean;
  /** Address above the paper sheets, one a task. */
  readonly paperPage: string;
  /** The id that is written is one of nobody known. */
  readonly isNew: boolean;
  /** Ids that go by what is written, where that is a name. */
  readonly called: readonly string[];
  readonly names: Names;
  readonly faults: readonly Fault[];
  readonly onChange: (part: Partial<Saw>) => void;
  readonly speak: Speak;
  readonly tell: Tell;
}

/** Who, which task in which variant, and the day it was seen. */
export function WhoAndTask(props: Props) {
  const { saw, on, today, zone, tasks, known, mayCheck, paperPage, isNew, called, names, faults } = props;
  const { onChange, speak, tell } = props;
  const task = tasks.find(({ id }) => id === saw.task);
  const choosePair = (pair: string, value: string) => {
    const { [pair]: _, ...others } = saw.variant;
    onChange({ variant: value === '' ? others : { ...others, [pair]: value } });
  };
  const written = saw.person.trim();
  const id = called.length === 1 ? (called[0] ?? '') : written;
  const name = names.get(id);
  const spoken =
    called.length > 1
      ? tell('look.whoMany', { name: written, list: called.join(', ') })
      : name !== undefined && tell('look.whoIs', { id, name });
  const shown = tasks.filter((one) => !isHeading(one));
  const option = (one: WitnessTask) => (
    <option key={one.id} value={one.id}>
      {tell('witness.taskOption', {
        id: one.id,
        name: speak({ say: `${one.id}.name` }),
        revision: revisionOn(one, on),
      })}
    </option>
  );
  const knowsPlace = task === undefined || Object.hasOwn(task.variants, 'place');
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
          {isNew && called.length === 0 && tell('witness.newHere', { id: saw.person.trim() })}
          {spoken}
        </p>
        <Refused faults={faults} fields={['person']} id="witness-who-refused" tell={tell} />
      </TextField>
      <div>
        <label htmlFor="witness-task">{tell('witness.task')}</label>
        <select
          id="witness-task"
          value={saw.task}
          onChange={(event) =>
            onChange({ task: event.currentTarget.value, variant: {}, points: {}, place: null })
          }
        >
          <option value="">{tell('witness.choose')}</option>
          {shown.filter(({ id }) => mayCheck(id)).map(option)}
          {shown.some(({ id }) => !mayCheck(id)) && (
            <optgroup label={tell('look.notFor')}>
              {shown.filter(({ id }) => !mayCheck(id)).map(option)}
            </optgroup>
          )}
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
      <div>
        <label htmlFor="witness-shift">{tell('look.shift')}</label>
        <select
          id="witness-shift"
          value={saw.shift ?? ''}
          aria-describedby="witness-shift-hint"
          onChange={(event) => {
            const { value } = event.currentTarget;
            onChange({ shift: value === '' ? null : (value as Shift) });
          }}
        >
          <option value="">{tell('look.shiftNone')}</option>
          {shifts.map((shift) => (
            <option key={shift} value={shift}>
              {tell(`look.${shift}`)}
            </option>
          ))}
        </select>
        <p className="hint" id="witness-shift-hint">
          {tell('look.shiftHint')}
        </p>
      </div>
      {!knowsPlace && (
        <div>
          <label htmlFor="witness-at">{pairName('place', speak)}</label>
          <select
            id="witness-at"
            value={saw.place ?? ''}
            aria-describedby="witness-at-hint"
            onChange={(event) => {
              const { value } = event.currentTarget;
              onChange({ place: places.find((place) => place === value) ?? null });
            }}
          >
            <option value="">{tell('look.shiftNone')}</option>
            {places.map((place) => (
              <option key={place} value={place}>
                {valueName('place', place, speak)}
              </option>
            ))}
          </select>
          <p className="hint" id="witness-at-hint">
            {tell('look.placeHint')}
          </p>
        </div>
      )}
      <div className="from-paper">
        <label className="choice">
          <input
            type="checkbox"
            checked={saw.paper}
            aria-describedby="witness-paper-hint"
            onChange={(event) => onChange({ paper: event.currentTarget.checked })}
          />
          <i aria-hidden="true" />
          {tell('look.paper')}
        </label>
        <p className="hint" id="witness-paper-hint">
          {tell('look.paperLine')}{' '}
          <a href={task === undefined ? paperPage : `${paperPage}${task.id.toLowerCase()}/`}>
            {task === undefined ? tell('look.printAny') : tell('look.print', { task: task.id })}
          </a>
        </p>
      </div>
    </div>
  );
}

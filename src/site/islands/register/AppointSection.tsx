import { type FormEvent, useState } from 'react';
import { appoint, appointFaults } from '../../../register/acts/appoint.ts';
import { isDay } from '../../../register/days.ts';
import { readPublicFile } from '../../../register/keyFile.ts';
import { personId } from '../../../register/shapes.ts';
import type { TaskMap } from '../../../register/taskMap.ts';
import { GivenError } from '../../../trade/given.ts';
import { dayText } from '../../dates.ts';
import { chance } from '../../device/edge.ts';
import { withoutSecret } from '../../device/keys.ts';
import { signHere } from '../../device/sign.ts';
import { named } from '../../people.ts';
import { shortKey } from '../../shortKey.ts';
import type { Speak, Tell } from '../../speak.ts';
import { Arrow } from '../Arrow.tsx';
import { Refused } from '../Refused.tsx';
import { TextField } from '../TextField.tsx';
import { Came, useDoing } from './Doing.tsx';
import { HandedEntry } from './HandedEntry.tsx';
import { emptyPassphrase, Passphrase, usePassphrase } from './Passphrase.tsx';
import { TaskChoices } from './TaskChoices.tsx';
import type { Device } from './useDevice.ts';

interface Props {
  readonly device: Device;
  readonly map: TaskMap;
  readonly refresh: () => Promise<void>;
  readonly speak: Speak;
  readonly tell: Tell;
}

/** The owner signs a witness in: a public key, the person it is bound to, tasks, and the first day. */
export function AppointSection({ device, map, refresh, speak, tell }: Props) {
  const { key, opened } = device;
  const [witness, setWitness] = useState('');
  const [person, setPerson] = useState('');
  const [all, setAll] = useState(true);
  const [tasks, setTasks] = useState<readonly string[]>([]);
  const [day, setDay] = useState('');
  // Counts what was signed here and when the owner's own key was taken: the entries for a key begin anew.
  const [round, setRound] = useState(0);
  const pass = usePassphrase();
  const doing = useDoing(tell);
  if (key === undefined || opened === undefined) return null;
  const { names } = device.people;
  const { view } = opened.judged;
  const today = view.dayIn(view.zone, opened.at);
  const given = {
    witness,
    person: person.trim(),
    tasks: all ? ('all' as const) : tasks,
    on: day.trim() === '' ? today : day.trim(),
  };
  const says =
    witness === '' || personId(given.person) !== undefined || given.tasks.length === 0 || !isDay(given.on)
      ? undefined
      : tell('handing.appointSays', {
          key: shortKey(witness),
          person: named(given.person, names, (values) => tell('drills.nameId', values)),
          tasks: all ? tell('handing.allTasks') : tasks.join(', '),
          day: dayText(tell, given.on),
        });
  const empty = () => {
    setWitness('');
    setPerson('');
    setAll(true);
    setTasks([]);
    setDay('');
    setRound((n) => n + 1);
  };
  const sign = (event: FormEvent) => {
    event.preventDefault();
    const passphrase = pass.take();
    void doing
      .run(async () => {
        // Before the key is opened: a wrong passphrase hides nothing else that is wrong.
        const looking = { signer: withoutSecret(key), now: opened.at, chance };
        const faults = [
          ...appointFaults(opened.judged, given, map, looking),
          ...emptyPassphrase(passphrase, tell),
        ];
        if (faults.length > 0) throw new GivenError(faults);
        const entry = await signHere(key, passphrase, (judged, writing) =>
          appoint(judged, given, map, writing),
        );
        return tell('register.appointed', { entry: shortKey(entry) });
      })
      .then((good) => {
        if (good) empty();
        return refresh();
      });
  };
  return (
    <section>
      <h2 className="view-title">{tell('register.appoint')}</h2>
      <p>{tell('register.appointLine')}</p>
      <HandedEntry
        key={round}
        mark="key"
        label={tell('register.publicFile')}
        onText={(text) => {
          setWitness('');
          setWitness(readPublicFile(text));
        }}
        tell={tell}
      />
      <p>
        <button
          type="button"
          className="as-link offer"
          onClick={() => {
            setWitness(key.publicKey);
            setRound((n) => n + 1);
          }}
        >
          {tell('register.useOwn')}
        </button>
      </p>
      <p className="wrap-id" role="status">
        {witness !== '' && tell('register.publicIs', { key: shortKey(witness) })}
      </p>
      <Refused faults={doing.faults} fields={['witness']} tell={tell} />
      <form onSubmit={sign} noValidate>
        <div className="fields">
          <TextField
            id="appoint-person"
            label={tell('register.person')}
            value={person}
            onValue={setPerson}
            autoCapitalize="none"
          >
            <Refused faults={doing.faults} fields={['person']} tell={tell} />
          </TextField>
          <TextField
            id="appoint-day"
            label={tell('register.on')}
            value={day}
            onValue={setDay}
            hint={tell('register.onHint', { today })}
            placeholder={today}
          >
            <Refused faults={doing.faults} fields={['on']} tell={tell} />
          </TextField>
        </div>
        <fieldset className="choices">
          <legend>{tell('register.tasks')}</legend>
          <div>
            <label className="choice">
              <input type="radio" name="appoint-tasks" checked={all} onChange={() => setAll(true)} />
              <i />
              {tell('register.all')}
            </label>
            <label className="choice">
              <input type="radio" name="appoint-tasks" checked={!all} onChange={() => setAll(false)} />
              <i />
              {tell('register.some')}
            </label>
          </div>
          {!all && <TaskChoices map={map} chosen={tasks} onChosen={setTasks} speak={speak} />}
          <Refused faults={doing.faults} fields={['tasks']} tell={tell} />
        </fieldset>
        {says !== undefined && (
          <>
            <p className="label" id="appoint-says">
              {tell('witness.says')}
            </p>
            <blockquote className="says" aria-labelledby="appoint-says">
              {says}
            </blockquote>
          </>
        )}
        <Passphrase
          id="appoint-pass"
          label={tell('register.pass')}
          hint={tell('register.passOnce')}
          field={pass}
          faults={doing.faults}
          tell={tell}
        />
        <div className="buttons">
          <button type="submit" className="button" disabled={doing.busy}>
            {tell('register.appointNow')} <Arrow />
          </button>
        </div>
        <Came doing={doing} without={['witness', 'person', 'on', 'tasks', 'passphrase']} tell={tell} />
      </form>
    </section>
  );
}

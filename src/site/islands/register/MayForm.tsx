import { useMemo, useState } from 'react';
import type { Variant } from '../../../register/bodies.ts';
import type { Regrade } from '../../../register/checks.ts';
import { mayAsker } from '../../../register/may.ts';
import { fullVariant, isHeading, isTicket, taskOf } from '../../../register/taskMap.ts';
import type { CrewSource } from '../../crewLines.ts';
import { mayView } from '../../mayView.ts';
import { pairName, valueName } from '../../variants.ts';
import { instantIn } from '../../zoned.ts';
import { MayAnswer } from './MayAnswer.tsx';

interface Props {
  readonly source: CrewSource;
  readonly person: string;
  readonly regrade: Regrade;
}

/** "May … do it?": task, variant, from, to in the register's zone; answered at every change. */
export function MayForm({ source, person, regrade }: Props) {
  const { board, judged, map, speak, tell } = source;
  const tasks = map.tasks.filter((task) => !isHeading(task) && !isTicket(task.id));
  const [task, setTask] = useState(tasks[0]?.id ?? '');
  const [variant, setVariant] = useState<Variant>({});
  const [from, setFrom] = useState(`${board.on}T07:00`);
  const [to, setTo] = useState(`${board.on}T17:00`);
  // What nobody asked is no question: on paper it would read as one that somebody put.
  const [touched, setTouched] = useState(false);
  const ask = useMemo(() => mayAsker(judged, { map, regrade }), [judged, map, regrade]);
  const asked = taskOf(map, task);
  const { zone } = judged.view;
  const [starts, ends] = [instantIn(zone, from), instantIn(zone, to)];
  const spans = starts !== undefined && ends !== undefined;
  const question = asked !== undefined &&
    spans &&
    ends > starts && { person, task, variant, from: starts, to: ends };
  return (
    <>
      <div className="off-paper may-form" onChange={() => setTouched(true)}>
        <div>
          <label htmlFor="may-task">{tell('standing.task')}</label>
          <select
            id="may-task"
            value={task}
            onChange={(event) => {
              setTask(event.currentTarget.value);
              setVariant({});
            }}
          >
            {tasks.map(({ id }) => (
              <option key={id} value={id}>
                {tell('person.ticket', { ticket: id, name: speak({ say: `${id}.name` }) })}
              </option>
            ))}
          </select>
        </div>
        {asked !== undefined &&
          Object.entries(asked.variants).map(([pair, values]) => (
            <div key={pair}>
              <label htmlFor={`may-${pair}`}>{pairName(pair, speak)}</label>
              <select
                id={`may-${pair}`}
                value={fullVariant(asked, variant)[pair] ?? ''}
                onChange={(event) => setVariant({ ...variant, [pair]: event.currentTarget.value })}
              >
                {values.map((value) => (
                  <option key={value} value={value}>
                    {valueName(pair, value, speak)}
                  </option>
                ))}
              </select>
            </div>
          ))}
        <div className="may-span">
          <div>
            <label htmlFor="may-from">{tell('person.from')}</label>
            <input
              id="may-from"
              type="datetime-local"
              value={from}
              aria-describedby="may-clock"
              onChange={(event) => setFrom(event.currentTarget.value)}
            />
          </div>
          <div>
            <label htmlFor="may-to">{tell('person.to')}</label>
            <input
              id="may-to"
              type="datetime-local"
              value={to}
              aria-describedby="may-clock may-bad"
              aria-invalid={spans && ends <= starts ? true : undefined}
              onChange={(event) => setTo(event.currentTarget.value)}
            />
          </div>
        </div>
        <p className="hint" id="may-clock">
          {tell('person.clock', { zone })}
        </p>
        <p className="message" id="may-bad" role="status">
          {question === false && (
            <strong>{tell(spans && asked !== undefined ? 'person.badSpan' : 'person.choose')}</strong>
          )}
        </p>
      </div>
      {question !== false && (
        <div className={touched ? undefined : 'off-paper'}>
          <MayAnswer may={mayView(source, question, ask(question))} live />
        </div>
      )}
    </>
  );
}

import type { Speak, Tell } from '../../speak.ts';

interface Props {
  readonly tasks: readonly string[];
  readonly chosen: readonly string[];
  readonly onTask: (task: string) => void;
  readonly speak: Speak;
  readonly tell: Tell;
}

/** The tasks, a row each to be taken or left. */
export function TaskRows({ tasks, chosen, onTask, speak, tell }: Props) {
  return (
    <section>
      <h2 className="view-title">{tell('making.tasks')}</h2>
      <div className="task-choices">
        {tasks.map((task) => (
          <label className="choice" key={task}>
            <input type="checkbox" checked={chosen.includes(task)} onChange={() => onTask(task)} />
            <i />
            <span>
              <b>{task}</b> {speak({ say: `${task}.name` })}
            </span>
          </label>
        ))}
      </div>
    </section>
  );
}

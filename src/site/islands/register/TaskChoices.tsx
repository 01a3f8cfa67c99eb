import { isHeading, type TaskMap } from '../../../register/taskMap.ts';
import type { Speak } from '../../speak.ts';

interface Props {
  readonly map: TaskMap;
  readonly chosen: readonly string[];
  readonly onChosen: (chosen: readonly string[]) => void;
  readonly speak: Speak;
}

/** Any of the tasks that a person can be seen at; headings are seen through their parts. Chosen ones come sorted. */
export function TaskChoices({ map, chosen, onChosen, speak }: Props) {
  const toggle = (id: string) =>
    onChosen(chosen.includes(id) ? chosen.filter((one) => one !== id) : [...chosen, id].sort());
  return (
    <div className="task-choices">
      {map.tasks
        .filter((task) => !isHeading(task))
        .map(({ id }) => (
          <label className="choice" key={id}>
            <input type="checkbox" checked={chosen.includes(id)} onChange={() => toggle(id)} />
            <i />
            <span>
              {id} {speak({ say: `${id}.name` })}
            </span>
          </label>
        ))}
    </div>
  );
}

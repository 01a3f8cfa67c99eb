import type { AnswersFile } from '../../../practice/sheet.ts';
import type { Judged } from '../../../register/judged.ts';
import { type TaskMap, taskOf } from '../../../register/taskMap.ts';
import { usesOf } from '../../../register/usedBenches.ts';
import { shortKey } from '../../shortKey.ts';
import type { Speak, Tell } from '../../speak.ts';
import { variantText } from '../../variants.ts';

interface Props {
  readonly judged: Judged;
  readonly map: TaskMap;
  readonly answers: AnswersFile;
  readonly speak: Speak;
  readonly tell: Tell;
}

/** Says for which checks of the person these very numbers are evidence already. It keeps nobody from signing. */
export function UsedBench({ judged, map, answers, speak, tell }: Props) {
  return usesOf(judged, answers.person, answers).map(({ entry, task, variant }) => {
    const known = taskOf(map, task);
    const way = known === undefined ? '' : variantText(known, variant, speak);
    return (
      <p className="message" key={entry}>
        <strong>
          {tell('look.used', { entry: shortKey(entry), check: way === '' ? task : `${task}, ${way}` })}
        </strong>
      </p>
    );
  });
}

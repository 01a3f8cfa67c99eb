import type { Speak, Tell } from '../../speak.ts';
import type { How, Saw, WitnessTask } from '../../witness.ts';
import { Choices } from './Choices.tsx';

interface Props {
  readonly task: WitnessTask | undefined;
  readonly saw: Saw;
  readonly onPoints: (points: Saw['points']) => void;
  readonly initials: string;
  readonly speak: Speak;
  readonly tell: Tell;
}

const hows: readonly How[] = ['seen', 'asked', 'missed'];

/** The task's critical points: each seen done, asked for, or missed. */
export function Points({ task, saw, onPoints, initials, speak, tell }: Props) {
  if (task === undefined) return null;
  return (
    <>
      <h2 className="view-title">{tell('witness.points')}</h2>
      {task.critical === null && <p className="nothing">{tell('witness.pointsNone')}</p>}
      {task.critical?.map((point) => (
        <Choices
          key={point}
          legend={speak({ say: `${task.id}.critical-${point}` })}
          options={hows.map((how) => ({ value: how, text: tell(`witness.${how}`) }))}
          value={saw.points[point] ?? null}
          onValue={(how) => onPoints({ ...saw.points, [point]: how })}
          initials={initials}
        />
      ))}
    </>
  );
}

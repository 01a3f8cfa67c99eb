/** After a signature: the register is opened anew, and how the person stands now is said. */
import { boardOf } from '../../../register/board.ts';
import type { Regrade } from '../../../register/checks.ts';
import type { TaskMap } from '../../../register/taskMap.ts';
import { speakDays } from '../../days.ts';
import { ownRegister } from '../../device/register.ts';
import { type Names, spokenName } from '../../people.ts';
import type { Speak, Tell } from '../../speak.ts';
import { stateOf } from '../../states.ts';
import type { SignedEntry } from './Signed.tsx';

interface Asked {
  readonly entry: string;
  readonly person: string;
  readonly task: string;
  /** The day of entry, in the register's zone. */
  readonly today: string;
  /** Seen and entered, where they differ. */
  readonly days: string;
  readonly map: TaskMap;
  readonly regrade: Regrade;
  readonly names: Names;
  readonly speak: Speak;
  readonly tell: Tell;
}

export async function standsNow(asked: Asked): Promise<SignedEntry | undefined> {
  const { entry, person, task, today, days, map, regrade, names, speak, tell } = asked;
  const after = await ownRegister();
  if (after === undefined) return undefined;
  const board = boardOf(after.judged, { on: today, map, people: [person], regrade });
  const stands = board.people.find(({ id }) => id === person)?.tasks[task];
  const why = stands?.why[0];
  return {
    entry,
    person: spokenName(person, names),
    task: `${task} ${speak({ say: `${task}.name` })}`,
    state: tell(`state.${stateOf(stands?.standing ?? 'not shown')}`),
    why: why === undefined ? '' : speakDays(why.say, speak, tell),
    days,
    // Beside "not shown" a 2 is the second witness, not a revision's number.
    second: stands?.standing === 'not shown' && why?.code === '2',
  };
}

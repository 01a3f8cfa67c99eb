import { Fragment } from 'react';
import type { Family } from '../../../practice/family.ts';
import type { NarrowTrouble } from '../../../practice/narrowTried.ts';
import { type Practice, type Sheet, sheetPlaces } from '../../../practice/sheet.ts';
import type { Language } from '../../../practice/words.ts';
import { type Draft, familiesOf, type Picked, sheetIdOf } from '../../making/draft.ts';
import type { Speak, Tell } from '../../speak.ts';
import { FamilyRow } from './FamilyRow.tsx';

interface Props {
  readonly draft: Draft;
  readonly sheet: Sheet | undefined;
  /** What narrowing has done, by family. */
  readonly troubles: ReadonlyMap<string, NarrowTrouble['trouble']>;
  readonly practice: Practice;
  readonly numbers: Readonly<Record<string, string>>;
  readonly onPick: (family: string, pick: Partial<Picked>) => void;
  readonly language: Language;
  readonly speak: Speak;
  readonly tell: Tell;
}

const nothing: Picked = { draws: 0, narrow: {} };

/** Exercises of the chosen tasks, under the first of these that each is about. */
export function FamilyRows(props: Props) {
  const { draft, sheet, troubles, practice, numbers, onPick, language, speak, tell } = props;
  const families = familiesOf(draft, practice.families.values());
  const taskOf = ({ tasks }: Family) => tasks.find((task) => draft.tasks.includes(task));
  // Where an exercise stands on the sheet, so that its example is what that bench gets.
  const places = sheet === undefined ? [] : sheetPlaces(sheet, 1);
  return (
    <section className="exercises">
      <h2 className="view-title">{tell('making.families')}</h2>
      {draft.tasks.map((task) => (
        <Fragment key={task}>
          <h3 className="of-task">
            {task} {speak({ say: `${task}.name` })}
          </h3>
          <ul className="made-families">
            {families
              .filter((family) => taskOf(family) === task)
              .map((family) => (
                <FamilyRow
                  key={family.id}
                  family={family}
                  pick={draft.picks[family.id] ?? nothing}
                  sheetId={sheetIdOf(draft.number)}
                  place={places.find((one) => one.family === family.id)?.place ?? 1}
                  alike={troubles.get(family.id) === 'alike'}
                  practice={practice}
                  number={numbers[family.id] ?? ''}
                  onPick={onPick}
                  language={language}
                  tell={tell}
                />
              ))}
          </ul>
        </Fragment>
      ))}
    </section>
  );
}

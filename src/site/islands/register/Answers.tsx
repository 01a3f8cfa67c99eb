import { lazy, Suspense } from 'react';
import type { Practice, Sheet, SheetGrade } from '../../../practice/sheet.ts';
import type { Language } from '../../../practice/words.ts';
import type { Judged } from '../../../register/judged.ts';
import type { TaskMap } from '../../../register/taskMap.ts';
import type { Tell } from '../../speak.ts';
import type { Saw } from '../../witness.ts';
import { Fetching } from '../Fetching.tsx';
import { type Later, useFetched } from '../useLater.ts';

/** Drawn again only where answers were brought in: the page is lighter without. */
const Graded = lazy(() => import('./Graded.tsx').then(({ Graded }) => ({ default: Graded })));

/** Pictures of codes, links and files are read by a part that comes once the page stands. */
const entry = () => import('./HandedEntry.tsx').then(({ HandedEntry }) => HandedEntry);

interface Props {
  readonly saw: Saw;
  readonly sheet: Sheet | undefined;
  readonly grade: SheetGrade | undefined;
  /** Name of this device, to say when the sheet was answered on it. */
  readonly ownDevice: string;
  /** Not here until it is fetched. */
  readonly practice: Practice | undefined;
  /** How the fetching of what grades goes. */
  readonly grading: Pick<Later<unknown>, 'failed' | 'again'>;
  readonly language: Language;
  readonly judged: Judged;
  readonly map: TaskMap;
  readonly onText: (text: string) => void;
  readonly onTakeOff: () => void;
  readonly tell: Tell;
}

/** The answers, if a sheet was set: brought in as file, link or code, graded again here, or taken off. */
export function Answers({
  saw,
  sheet,
  grade,
  ownDevice,
  judged,
  map,
  practice,
  grading,
  language,
  onText,
  onTakeOff,
  tell,
}: Props) {
  const later = useFetched(entry);
  const HandedEntry = later.part;
  return (
    <>
      <h2 className="view-title">
        {tell('witness.answers')}{' '}
        {saw.answers !== null && sheet !== undefined && (
          <span className="label">
            {tell('witness.answersLabel', { number: sheet.number, bench: saw.answers.bench })}
          </span>
        )}
      </h2>
      {grading.failed && <Fetching later={grading} tell={tell} />}
      {saw.answers === null ? (
        <>
          {HandedEntry === null ? (
            <Fetching later={later} tell={tell} />
          ) : (
            <HandedEntry mark="answers" label={tell('witness.answersFile')} onText={onText} tell={tell} />
          )}
          <p className="note">{tell('witness.answersNone')}</p>
        </>
      ) : (
        <>
          {sheet !== undefined && grade !== undefined && practice !== undefined && (
            <Suspense>
              <Graded
                sheet={sheet}
                file={saw.answers}
                grade={grade}
                judged={judged}
                map={map}
                practice={practice}
                language={language}
                tell={tell}
              />
            </Suspense>
          )}
          <p className="note">
            {tell(saw.answers.device === ownDevice ? 'witness.answeredHere' : 'witness.answeredOn', {
              device: saw.answers.device,
            })}
          </p>
          {saw.answers.person !== saw.person.trim() && (
            <p className="message">
              <strong>{tell('witness.otherPerson', { person: saw.answers.person })}</strong>
            </p>
          )}
          {saw.answers.task !== saw.task && (
            <p className="message">
              <strong>{tell('witness.otherTask', { task: saw.answers.task })}</strong>
            </p>
          )}
          <p>
            <button type="button" className="as-link offer" onClick={onTakeOff}>
              {tell('witness.takeOff')}
            </button>
          </p>
        </>
      )}
    </>
  );
}

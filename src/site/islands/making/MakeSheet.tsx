import { useCallback, useEffect, useMemo, useState } from 'react';
import { BENCHES_TRIED, type NarrowTrouble, narrowTroubles } from '../../../practice/narrowTried.ts';
import { fourFigures } from '../../device/edge.ts';
import { loadPractice } from '../../device/practice.ts';
import { type Draft, drawsOf, newDraft, sheetOf, withPick, withTask } from '../../making/draft.ts';
import { fitted, keepDraft, keptDraft } from '../../making/kept.ts';
import { speaker, type Tell, teller, type WordTable } from '../../speak.ts';
import { Fetching } from '../Fetching.tsx';
import { useLanguage } from '../useLanguage.ts';
import { useFetched } from '../useLater.ts';
import { FamilyRows } from './FamilyRows.tsx';
import { HandSection } from './HandSection.tsx';
import { PassSection } from './PassSection.tsx';
import { type Printed, PrintedSet } from './PrintedSet.tsx';
import { TaskRows } from './TaskRows.tsx';

interface Props {
  readonly lang: string;
  readonly words: WordTable;
  /** Tasks that any exercise is about, in their order. */
  readonly tasks: readonly string[];
  /** Sheet numbers of the practice pages, by family. */
  readonly numbers: Readonly<Record<string, string>>;
  /** Numbers of the sheets that the works have. */
  readonly taken: readonly number[];
  readonly answerPage: string;
}

/** Puts a sheet together and hands it out. Everything chosen is kept on this device at every stroke. */
export default function MakeSheet({ lang, words, tasks, numbers, taken, answerPage }: Props) {
  const speak = useMemo(() => speaker(words), [words]);
  const tell = useMemo(() => teller(words), [words]);
  const later = useFetched(loadPractice);
  const practice = later.part;
  const language = useLanguage(lang, words, practice);
  const [draft, setDraft] = useState<Draft>(() => newDraft(0));
  const [printed, setPrinted] = useState<Printed | null>(null);
  useEffect(() => setDraft(keptDraft(fourFigures())), []);
  useEffect(() => {
    if (practice !== null) setDraft((now) => fitted(now, practice.families));
  }, [practice]);
  const change = (next: Draft) => {
    // A hand may be quicker than what was kept.
    const numbered = next.number === 0 ? { ...next, number: fourFigures() } : next;
    setDraft(numbered);
    keepDraft(numbered);
  };
  const families = useMemo(() => [...(practice?.families.values() ?? [])], [practice]);
  const made = useMemo(
    () => sheetOf(draft, families, { en: tell('making.sheetTitle', { number: draft.number }) }),
    [draft, families, tell],
  );
  const sheet = 'sheet' in made ? made.sheet : undefined;
  // Tried again only when something on it is narrowed otherwise, stands at another place, or is for other benches.
  const narrowed =
    sheet?.families.some(({ narrow }) => narrow !== undefined) === true &&
    JSON.stringify([sheet.number, sheet.families, Math.min(draft.benches, BENCHES_TRIED)]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what it depends on is in `narrowed`
  const troubles = useMemo(
    () =>
      sheet === undefined || practice === null
        ? nothing
        : new Map(narrowTroubles(sheet, practice, draft.benches).map((one) => [one.family, one.trouble])),
    [narrowed, practice, sheet === undefined],
  );
  const has = (trouble: Trouble) => [...troubles.values()].includes(trouble);
  const drawn = practice !== null && !has('undrawable');
  const onPrinted = useCallback(() => setPrinted(null), []);
  return (
    <>
      <div className="making">
        <section className="answer" role="status">
          <p className="label">
            {tell(labelOf(draft.benches, has('alike')), {
              tasks: tasksText(draft.tasks.length, tell),
              benches: draft.benches,
            })}
          </p>
          <p className="huge">
            {answerLine(practice === null && draft.tasks.length > 0 ? null : made, tell)}
          </p>
          {has('undrawable') && (
            <p className="message">
              <strong>{tell('making.undrawableSheet')}</strong>
            </p>
          )}
          {has('alike') && <p className="message">{tell('making.alikeSheet')}</p>}
        </section>
        <div className="columns">
          <div>
            <TaskRows
              tasks={tasks}
              chosen={draft.tasks}
              onTask={(task) => change(withTask(draft, task, families))}
              speak={speak}
              tell={tell}
            />
            {practice === null ? (
              <Fetching later={later} text={tell('making.fetching')} tell={tell} />
            ) : (
              draft.tasks.length > 0 && (
                <FamilyRows
                  draft={draft}
                  sheet={sheet}
                  troubles={troubles}
                  practice={practice}
                  numbers={numbers}
                  onPick={(family, pick) => change(withPick(draft, family, pick))}
                  language={language}
                  speak={speak}
                  tell={tell}
                />
              )
            )}
          </div>
          <div>
            <PassSection draft={draft} sheet={sheet} onDraft={change} speak={speak} tell={tell} />
            <HandSection
              draft={draft}
              sheet={drawn ? sheet : undefined}
              taken={taken}
              onDraft={change}
              onPrint={setPrinted}
              answerPage={answerPage}
              tell={tell}
            />
          </div>
        </div>
      </div>
      {printed !== null && sheet !== undefined && practice !== null && (
        <PrintedSet
          what={printed}
          sheet={sheet}
          benches={draft.benches}
          practice={practice}
          language={language}
          answerPage={answerPage}
          onPrinted={onPrinted}
          speak={speak}
          tell={tell}
        />
      )}
    </>
  );
}

type Trouble = NarrowTrouble['trouble'];
const nothing: ReadonlyMap<string, Trouble> = new Map();

function labelOf(benches: number, alike: boolean) {
  if (benches === 1) return 'making.labelOne';
  return alike ? 'making.labelAlike' : 'making.label';
}

function tasksText(count: number, tell: Tell): string {
  if (count === 0) return tell('making.tasksNone');
  return count === 1 ? tell('making.tasksOne') : tell('making.tasksMore', { count });
}

/** @param made  null while the exercises are on their way */
function answerLine(made: ReturnType<typeof sheetOf> | null, tell: Tell): string {
  if (made === null) return tell('making.fetching');
  if ('lacks' in made) return tell(`making.lacks-${made.lacks}`);
  const { sheet } = made;
  const draws = drawsOf(sheet);
  if ('bound' in sheet.rule) return tell('making.answerBound', { draws });
  if ('sequential' in sheet.rule) return tell('making.answerWald', { draws });
  return draws === 1 ? tell('making.answerOne') : tell('making.answerAll', { draws });
}

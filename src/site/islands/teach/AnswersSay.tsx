import { useId, useMemo, useState } from 'react';
import type { Brought } from '../../../practice/statistics/rawTries.ts';
import type { Fault } from '../../../trade/given.ts';
import { broughtFile } from '../../broughtFiles.ts';
import { readFile } from '../../device/files.ts';
import { speaker, teller, type WordTable } from '../../speak.ts';
import { FamilyTallies } from './FamilyTallies.tsx';
import { LeftOut } from './LeftOut.tsx';
import { PooledSheets } from './PooledSheets.tsx';
import { SheetTallies } from './SheetTallies.tsx';
import { Trainers } from './Trainers.tsx';
import { useTries } from './useTries.ts';

interface Props {
  readonly lang: string;
  readonly words: WordTable;
  /** Sheet numbers of the practice pages by family, in the order of their list. */
  readonly numbers: Readonly<Record<string, string>>;
}

interface Bad {
  readonly name: string;
  readonly faults: readonly Fault[];
}

/** So many faults of one file are shown: a file with more is no such file. */
const SHOWN = 5;

/** What first tries say of families, sheets and people, from files that a trainer brings in. Nothing is kept. */
export default function AnswersSay({ lang, words, numbers }: Props) {
  const id = useId();
  const tell = useMemo(() => teller(words), [words]);
  const speak = useMemo(() => speaker(words), [words]);
  const [brought, setBrought] = useState<readonly Brought[]>([]);
  const [bad, setBad] = useState<readonly Bad[]>([]);
  const { graded, busy, failed } = useTries(brought, lang);
  const take = async (box: HTMLInputElement) => {
    const read = await Promise.all(
      [...(box.files ?? [])].map(async (file) => ({
        name: file.name,
        ...broughtFile(file.name, await readFile(file), tell),
      })),
    );
    box.value = '';
    setBad(read.flatMap((one) => (one.good ? [] : [{ name: one.name, faults: one.faults }])));
    const good = read.flatMap((one) => (one.good ? [one.value] : []));
    if (good.length > 0) setBrought((before) => [...before, ...good]);
  };
  const people = new Set(graded?.tried.map(({ who }) => who)).size;
  return (
    <>
      <section className="off-paper">
        <h2 className="view-title">{tell('answersPage.bring')}</h2>
        <div className="file-entry">
          <label htmlFor={id}>{tell('answersPage.files')}</label>
          <input
            id={id}
            type="file"
            multiple
            accept="application/json,.json"
            aria-describedby={`${id}-hint ${id}-refused`}
            onChange={(event) => void take(event.currentTarget)}
          />
          <p className="hint" id={`${id}-hint`}>
            {tell('answersPage.filesHint')}
          </p>
          <div className="message" id={`${id}-refused`} role="alert">
            {bad.map(({ name, faults }) => (
              <div key={name}>
                <p>
                  <strong>{tell('answersPage.notOne', { name })}</strong> {tell('answersPage.notIn')}
                </p>
                <details className="opens">
                  <summary>{tell('answersPage.wrong')}</summary>
                  <div>
                    {faults.slice(0, SHOWN).map(({ field, message, todo }) => (
                      <p key={`${field} ${message}`}>
                        {tell('answersPage.refused', {
                          field: field === '' ? '' : `${field}: `,
                          message,
                          todo,
                        })}
                      </p>
                    ))}
                  </div>
                </details>
              </div>
            ))}
          </div>
        </div>
      </section>
      <div role="status">
        {busy !== null && <p>{tell('answersPage.busy', busy)}</p>}
        {failed !== '' && <p>{tell('answersPage.failed', { why: failed })}</p>}
        {graded === null && busy === null && failed === '' && (
          <p className="nothing">{tell('answersPage.nothing')}</p>
        )}
        {graded !== null && busy === null && (
          <p>
            <strong>
              {tell('answersPage.came', { files: brought.length, tries: graded.tried.length, people })}
            </strong>
          </p>
        )}
      </div>
      {graded !== null && (
        <>
          <LeftOut left={graded.left} tell={tell} />
          <FamilyTallies graded={graded} numbers={numbers} lang={lang} speak={speak} tell={tell} />
          <SheetTallies graded={graded} lang={lang} speak={speak} tell={tell} />
          <PooledSheets graded={graded} speak={speak} tell={tell} />
        </>
      )}
      <Trainers speak={speak} tell={tell} />
    </>
  );
}

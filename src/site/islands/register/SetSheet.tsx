import { type FormEvent, useEffect, useMemo, useRef, useState } from 'react';
import { criticalIn } from '../../../practice/draw.ts';
import { MOST_BENCHES, type SetFile, type Sheet, sheetPlaces } from '../../../practice/sheet.ts';
import { tellDraw } from '../../../practice/show.ts';
import { personId } from '../../../register/shapes.ts';
import { fourFigures } from '../../device/edge.ts';
import { saveFile } from '../../device/files.ts';
import { loadPractice } from '../../device/practice.ts';
import { question } from '../../practice.ts';
import { firstDraws } from '../../setPreview.ts';
import { fileText, setName } from '../../sheetFiles.ts';
import { speaker, teller, type WordTable } from '../../speak.ts';
import { tried as triedTo } from '../../tried.ts';
import { wholeIn } from '../../whole.ts';
import { Arrow } from '../Arrow.tsx';
import { Fetching } from '../Fetching.tsx';
import { DrawFigures } from '../practice/DrawFigures.tsx';
import { TextField } from '../TextField.tsx';
import { useLanguage } from '../useLanguage.ts';
import { useFetched, useLater } from '../useLater.ts';
import { HandOut } from './HandOut.tsx';
import { PassRule } from './PassRule.tsx';
import { useDrawer } from './useCodes.ts';

interface Props {
  readonly lang: string;
  readonly words: WordTable;
  readonly sheets: readonly Sheet[];
  /** Sheet numbers of the practice pages, by family. */
  readonly numbers: Readonly<Record<string, string>>;
  readonly answerPage: string;
}

/** Opens the register of this device, which the page itself can do without. */
const loadUses = () => import('./BenchUses.tsx').then(({ BenchUses }) => BenchUses);

/** Sets a sheet for a person: what is asked, by which rule, and the file, link and code to hand over. No key is needed. */
export default function SetSheet({ lang, words, sheets, numbers, answerPage }: Props) {
  const later = useFetched(loadPractice);
  const practice = later.part;
  const speak = useMemo(() => speaker(words), [words]);
  const tell = useMemo(() => teller(words), [words]);
  const language = useLanguage(lang, words, practice);
  const [id, setId] = useState(sheets[0]?.id ?? '');
  const [person, setPerson] = useState('');
  const [benchText, setBenchText] = useState('');
  const [chosen, setChosen] = useState('');
  const [saved, setSaved] = useState('');
  const [tried, setTried] = useState(false);
  const [shown, setShown] = useState(false);
  const form = useRef<HTMLFormElement>(null);
  useDrawer();
  const BenchUses = useLater(loadUses);
  // What was written before script came is taken over; a bench number is offered where none was.
  useEffect(() => {
    const before = new FormData(form.current ?? undefined);
    setPerson(String(before.get('person') ?? ''));
    setBenchText(String(before.get('bench') || fourFigures()));
  }, []);

  const sheet = sheets.find((one) => one.id === id);
  const bench = wholeIn(benchText, MOST_BENCHES);
  const shownBench = bench ?? 1;
  const draws = useMemo(() => {
    if (sheet === undefined || practice === null) return [];
    const { world } = practice;
    const first = triedTo(() => firstDraws(sheet, shownBench, practice));
    // One that is narrowed to nothing shows nothing; the answering device says so.
    return (first.good ? first.value : []).map(({ part, draw }) => {
      return { part, draw, world, shown: tellDraw(draw, world, language) };
    });
  }, [sheet, shownBench, practice, language]);
  if (sheet === undefined) return null;
  const { length: count } = sheetPlaces(sheet, shownBench);
  const { rule } = sheet;
  const task = sheet.tasks.includes(chosen) ? chosen : (sheet.tasks[0] ?? '');
  const badPerson = personId(person.trim()) !== undefined;
  const taskName = (one: string) =>
    tell('setPage.taskOption', { id: one, name: speak({ say: `${one}.name` }) });

  const set: SetFile | undefined =
    badPerson || bench === undefined
      ? undefined
      : { v: 1, kind: 'set', sheet: sheet.id, bench, person: person.trim(), task };
  const make = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (set === undefined) return;
    saveFile(setName(set), fileText(set));
    setSaved(setName(set));
  };
  const show = () => {
    setTried(true);
    if (set !== undefined) setShown(true);
  };
  const about = { number: sheet.number, bench: shownBench, person: person.trim() };

  return (
    <>
      <section className="answer">
        <p className="label">
          {tell('setPage.label', { number: sheet.number, title: sheet.title[lang] ?? sheet.id })}
        </p>
        <p className="huge">
          {'need' in rule
            ? tell(count === 1 ? 'setPage.answerOne' : 'setPage.answerAll', { draws: count })
            : tell('setPage.answerRule', { draws: count })}
        </p>
      </section>
      <div className="fields">
        <div>
          <label htmlFor="set-sheet">{tell('setPage.sheet')}</label>
          <select id="set-sheet" value={sheet.id} onChange={(event) => setId(event.currentTarget.value)}>
            {sheets.map((one) => (
              <option key={one.id} value={one.id}>
                {tell('setPage.sheetOption', { number: one.number, title: one.title[lang] ?? one.id })}
              </option>
            ))}
          </select>
        </div>
      </div>
      <div className="columns">
        <section>
          <h2 className="view-title">
            {tell('setPage.asks')}{' '}
            <span className="label">{tell('setPage.asksLabel', { bench: shownBench })}</span>
          </h2>
          {practice === null && <Fetching later={later} tell={tell} />}
          <ul className="set-families">
            {draws.map(({ part, draw, world, shown }, i) => {
              const { family } = draw;
              const critical = criticalIn(draw, world);
              const values = { number: numbers[family.id] ?? '', count: part.draws, asks: shown.asks.length };
              return (
                // biome-ignore lint/suspicious/noArrayIndexKey: a sheet may have a family twice, narrowed otherwise
                <li key={i}>
                  <DrawFigures draw={draw} world={world} language={language} small />
                  <div>
                    <h3>{shown.title}</h3>
                    <p className="label">{tell(countKey(part.draws, shown.asks.length), values)}</p>
                    {shown.asks
                      .filter((ask) => critical.includes(ask.id))
                      .map((ask) => (
                        <p className="note" key={ask.id}>
                          {tell('setPage.critical', { prompt: question(ask) })}
                        </p>
                      ))}
                  </div>
                </li>
              );
            })}
          </ul>
        </section>
        <form ref={form} onSubmit={make} noValidate>
          <h2 className="view-title">{tell('setPage.rule')}</h2>
          <PassRule sheet={sheet} speak={speak} />
          <p className="note">{tell('setPage.sight')}</p>
          <h2 className="view-title">{tell('setPage.handOut')}</h2>
          <div className="fields">
            <div>
              <label htmlFor="set-task">{tell('setPage.task')}</label>
              <select id="set-task" value={task} onChange={(event) => setChosen(event.currentTarget.value)}>
                {sheet.tasks.map((one) => (
                  <option key={one} value={one}>
                    {taskName(one)}
                  </option>
                ))}
              </select>
            </div>
            <TextField
              id="set-person"
              name="person"
              label={tell('setPage.person')}
              value={person}
              onValue={setPerson}
              hint={tell('setPage.personHint')}
              fault={tried && badPerson ? tell('setPage.badPerson') : undefined}
              autoCapitalize="none"
            />
            <TextField
              id="set-bench"
              name="bench"
              label={tell('setPage.bench')}
              value={benchText}
              onValue={setBenchText}
              hint={tell('setPage.benchHint')}
              fault={tried && bench === undefined ? tell('setPage.badBench') : undefined}
              inputMode="numeric"
            />
          </div>
          <div role="status">
            {BenchUses !== null && set !== undefined && (
              <BenchUses person={set.person} of={set} tell={tell} />
            )}
          </div>
          <div className="buttons">
            <button className="button" type="submit">
              {tell('setPage.make')} <Arrow />
            </button>
            <button className="button second" type="button" onClick={show}>
              {tell('handing.show')} <Arrow />
            </button>
          </div>
          <p role="status">{saved !== '' && tell('setPage.saved', { name: saved })}</p>
          {shown && set !== undefined && (
            <HandOut
              mark="set"
              json={set}
              page={answerPage}
              label={tell('handing.setCode', about)}
              opens={tell('handing.setOpens', about)}
              tell={tell}
            />
          )}
          <p className="note">{tell('setPage.after')}</p>
        </form>
      </div>
    </>
  );
}

/** Of so many draws, with so many asks each. */
function countKey(draws: number, asks: number) {
  if (draws === 1) return asks === 1 ? 'setPage.asksCountDrawOne' : 'setPage.asksCountDraw';
  return asks === 1 ? 'setPage.asksCountOne' : 'setPage.asksCount';
}

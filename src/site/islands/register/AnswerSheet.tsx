import { useMemo, useRef, useState } from 'react';
import { type SetFile, type Sheet, sheetDraws, sheetPlaces } from '../../../practice/sheet.ts';
import { readSheetForm } from '../../../practice/sheetForm.ts';
import { saveFile } from '../../device/files.ts';
import { loadPractice } from '../../device/practice.ts';
import { asSaved, asTakenUp } from '../../device/sheets.ts';
import type { Given } from '../../practice.ts';
import { answersFile, answersName, fileText, readSetOrSheet } from '../../sheetFiles.ts';
import { speaker, teller, type WordTable } from '../../speak.ts';
import { tried } from '../../tried.ts';
import { Arrow } from '../Arrow.tsx';
import { Fetching } from '../Fetching.tsx';
import { useLanguage } from '../useLanguage.ts';
import { useFetched } from '../useLater.ts';
import { AnotherSheet } from './AnotherSheet.tsx';
import { AnswerDraw } from './AnswerDraw.tsx';
import { BenchForm } from './BenchForm.tsx';
import { HandedEntry } from './HandedEntry.tsx';
import { HandedOver } from './HandedOver.tsx';
import { LookOver } from './LookOver.tsx';
import { ReadySheet } from './ReadySheet.tsx';
import { useDrawer } from './useCodes.ts';
import { useOwnSheets } from './useOwnSheets.ts';

interface Props {
  readonly sheets: readonly Sheet[];
  readonly lang: string;
  readonly words: WordTable;
  readonly witnessPage: string;
}

/** A sheet that was set, answered one draw after the other; no verdict; everything kept at every stroke. */
export default function AnswerSheet({ lang, words, sheets, witnessPage }: Props) {
  const speak = useMemo(() => speaker(words), [words]);
  const tell = useMemo(() => teller(words), [words]);
  const own = useOwnSheets();
  const { kept, asked, waiting, unset, device, stays, came, change, away } = own;
  // How the answers leave this device, as far as this visit of the page knows.
  const [how, setHow] = useState<'file' | 'code'>();
  const top = useRef<HTMLHeadingElement>(null);
  useDrawer();
  const later = useFetched(loadPractice);
  const practice = later.part;
  const language = useLanguage(lang, words, practice);
  const sheet = useMemo(() => {
    if (asked?.of === undefined) return sheets.find(({ id }) => id === asked?.sheet);
    if (practice === null) return undefined;
    const read = tried(() => readSheetForm(asked.of, practice));
    return read.good ? read.value : undefined;
  }, [asked, sheets, practice]);
  const bench = asked?.bench;
  const drawn = useMemo(
    () =>
      sheet === undefined || bench === undefined || practice === null
        ? undefined
        : tried(() => sheetDraws(sheet, bench, practice)),
    [sheet, bench, practice],
  );
  const draws = drawn?.good ? drawn.value : [];

  const place = kept?.place ?? 1;
  const go = (to: number) => {
    change(() => ({ place: to }));
    requestAnimationFrame(() => {
      top.current?.focus();
      top.current?.scrollIntoView();
    });
  };
  if (unset !== null) {
    return practice === null ? (
      <Fetching later={later} text={tell('answerPage.fetching')} tell={tell} />
    ) : (
      <BenchForm
        file={unset}
        practice={practice}
        onSet={came}
        onAway={own.leaveUnset}
        speak={speak}
        tell={tell}
      />
    );
  }
  if (asked === null) {
    return (
      <>
        <HandedEntry
          mark="set"
          label={tell('answerPage.open')}
          hint={tell('answerPage.openHint')}
          wrong={tell('answerPage.notSet')}
          onText={(text) => came(readSetOrSheet(text))}
          tell={tell}
        />
        {!stays && <p className="nothing">{tell('answerPage.notKept')}</p>}
      </>
    );
  }
  const about = {
    sheet: asked.sheet,
    number: sheet?.number ?? 0,
    bench: asked.bench,
    person: asked.person,
    task: asked.task,
    draws: sheet === undefined ? 0 : sheetPlaces(sheet, asked.bench).length,
  };
  const numberOf = (one: SetFile): number | string => {
    const made = one.of?.['number'];
    return typeof made === 'number' ? made : (sheets.find(({ id }) => id === one.sheet)?.number ?? one.sheet);
  };
  const others = (
    <AnotherSheet
      lies={asked}
      waiting={kept === null ? [] : waiting}
      numberOf={numberOf}
      onCame={came}
      tell={tell}
    />
  );
  const taskName = { id: asked.task, name: words[asked.task]?.['name'] ?? '' };
  const fetching = <Fetching later={later} text={tell('answerPage.fetching')} tell={tell} />;
  if (asked.of !== undefined && practice === null) return fetching;
  const unfit =
    sheet === undefined
      ? tell('answerPage.unknown', about)
      : !sheet.tasks.includes(asked.task)
        ? tell('answerPage.notFor', about)
        : drawn?.good === false
          ? tell('answerPage.undrawable', about)
          : undefined;
  if (unfit !== undefined) {
    return (
      <div className="nothing">
        {others}
        <p>{unfit}</p>
        <p>
          <button type="button" className="as-link offer" onClick={away}>
            {tell('answerPage.away')}
          </button>
        </p>
      </div>
    );
  }
  if (kept === null) {
    return (
      <>
        {others}
        <ReadySheet
          about={about}
          task={taskName}
          device={device}
          onDevice={own.setDevice}
          onBegin={() => own.begin(asked)}
          onAway={away}
          tell={tell}
        />
      </>
    );
  }
  if (practice === null) return fetching;
  const file = answersFile(kept.set, kept.device, draws, kept.answers);
  const handOver = (how: 'file' | 'code') => {
    if (how === 'file') saveFile(answersName(file), fileText(file));
    setHow(how);
    change(asSaved);
    requestAnimationFrame(() => top.current?.focus());
  };
  const look = () => {
    change(asTakenUp);
    go(draws.length + 1);
  };
  if (kept.handed !== null) {
    return (
      <>
        {others}
        <HandedOver
          about={about}
          file={file}
          how={how}
          top={top}
          witnessPage={witnessPage}
          onSave={() => handOver('file')}
          onLook={look}
          onAway={away}
          tell={tell}
        />
      </>
    );
  }
  const shown = draws.find((draw) => draw.place === place);
  return (
    <>
      {others}
      {shown === undefined ? (
        <LookOver
          about={about}
          rows={draws.map(({ place: at, draw }) => ({
            place: at,
            title: draw.family.title[lang] ?? draw.family.id,
            asks: draw.family.asks.length,
            written: Object.keys(kept.answers[at] ?? {}).length,
          }))}
          top={top}
          onPlace={go}
          onSave={() => handOver('file')}
          onShow={() => handOver('code')}
          tell={tell}
        />
      ) : (
        <AnswerDraw
          key={`${asked.sheet}-${asked.bench}-${shown.place}`}
          draw={shown.draw}
          place={shown.place}
          about={about}
          world={practice.world}
          language={language}
          given={kept.answers[shown.place] ?? {}}
          onGiven={(given: Given) =>
            change(({ answers }) => ({ answers: { ...answers, [shown.place]: given } }))
          }
          onPlace={go}
          top={top}
          tell={tell}
          speak={speak}
        />
      )}
      <p className="note kept">{tell(stays ? 'answerPage.kept' : 'answerPage.notKept')}</p>
      <details className="opens">
        <summary>{tell('answerPage.end')}</summary>
        <div>
          <p>{tell('answerPage.endLine')}</p>
          <button type="button" className="button second" onClick={away}>
            {tell('answerPage.endNow')} <Arrow />
          </button>
        </div>
      </details>
    </>
  );
}

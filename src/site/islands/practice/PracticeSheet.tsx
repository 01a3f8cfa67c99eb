import { useEffect, useMemo, useRef, useState } from 'react';
import { criticalIn, drawOf } from '../../../practice/draw.ts';
import type { Family } from '../../../practice/family.ts';
import { gradeDraw } from '../../../practice/grade.ts';
import { keyOf } from '../../../practice/key.ts';
import type { WorldData } from '../../../practice/model.ts';
import { tellDraw } from '../../../practice/show.ts';
import { dropBegun, keepBegun } from '../../device/begunDraws.ts';
import { fourFigures } from '../../device/edge.ts';
import { type Given, outcomes, textParts, tryText, verdictText } from '../../practice.ts';
import { speaker, teller, unbroken, type WordTable } from '../../speak.ts';
import { tapedOf } from '../../taped.ts';
import { Arrow } from '../Arrow.tsx';
import { AskEntry } from './asks/AskEntry.tsx';
import { ComesAgain } from './ComesAgain.tsx';
import { DrawFigures } from './DrawFigures.tsx';
import { Holds, Rework } from './Findings.tsx';
import { Known } from './Known.tsx';
import { models } from './ownModel.ts';
import { askedSeed, bringBack, givesWay, keepTry, noteWhatCame } from './tries.ts';
import { type Held, heldBy } from './unread.ts';

interface Props {
  readonly lang: string;
  readonly words: WordTable;
  readonly family: Family;
  readonly world: WorldData;
  /** The draw that the page is built with, for whoever has no script. */
  readonly seed: string;
  /** Address of the page that lists the practice and says what to take next. */
  readonly list: string;
}

/** Whether two answers are one: they are plain data. */
const same = (one: unknown, other: unknown) => JSON.stringify(one) === JSON.stringify(other);

/**
 * One draw of a family: its figure, what is known, the entries, one button. Tries stay on this device. Everything it
 * needs is here once the page has loaded, so a cut network does not stop it.
 */
export default function PracticeSheet(props: Props) {
  const { lang, words, family, world: data, seed: builtSeed, list } = props;
  const world = useMemo(() => ({ ...data, models }), [data]);
  const speak = useMemo(() => speaker(words), [words]);
  const tell = useMemo(() => teller(words), [words]);
  const language = useMemo(() => ({ lang, speak }), [lang, speak]);
  const [seed, setSeed] = useState(builtSeed);
  const [answers, setAnswers] = useState<Given>({});
  /** The tries at this draw, what was given each time. */
  const [tries, setTries] = useState<readonly Given[]>([]);
  const [kept, setKept] = useState(true);
  /** Rises with every try that this page keeps, and when it made notes of older ones. */
  const [count, setCount] = useState(0);
  /** Raised when entries must be drawn anew from `answers` (another draw, or tries brought back). */
  const [fresh, setFresh] = useState(0);
  const [way, setWay] = useState(false);
  /** Why nothing was taped when it was asked for; gone with the next change. */
  const [held, setHeld] = useState<Held | null>(null);
  const verdict = useRef<HTMLElement>(null);
  const touched = useRef(false);

  const draw = useMemo(() => drawOf(family, seed, world), [family, seed, world]);
  const shown = useMemo(() => tellDraw(draw, world, language), [draw, world, language]);
  const critical = useMemo(() => criticalIn(draw, world), [draw, world]);
  const last = tries.at(-1);
  const grade = useMemo(
    () => (last === undefined ? undefined : gradeDraw(draw, last, world, language)),
    [draw, last, world, language],
  );
  const found = useMemo(
    () => (grade === undefined || last === undefined ? [] : outcomes(tell, shown.asks, grade, last)),
    [grade, last, shown, tell],
  );

  // Once a taping: an entry whose answer stays is given the same thing, and draws nothing anew.
  const all = useMemo(
    () =>
      Object.fromEntries(
        found.map(({ ask, finding, note }) => [
          ask.id,
          tapedOf(finding, { draw, world, given: last?.[ask.id], note }),
        ]),
      ),
    [found, last, draw, world],
  );
  // What was found belongs to the answer that was taped: an answer that was changed since shows nothing of it.
  const tapedAt = (id: string) => (same(answers[id], last?.[id]) ? all[id] : undefined);
  const working = useMemo(
    () => (way ? keyOf(draw, world, language).working : []),
    [way, draw, world, language],
  );

  const take = (next: string, before: readonly Given[], entries: Given) => {
    setSeed(next);
    setTries(before);
    setAnswers(entries);
    setWay(false);
    setHeld(null);
    setFresh((n) => n + 1);
  };
  // The draw that the address names, else what was last answered on this device; unless someone has begun already.
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when script takes the page over
  useEffect(() => {
    const asked = askedSeed(location.search);
    const grading = { family, world, language };
    const open = async () => {
      // A device that begins here gets a draw of its own: the one the page is built with is on every phone of the bench.
      const back = await bringBack(asked, String(fourFigures()), grading);
      if (givesWay(touched.current, asked, builtSeed)) take(back.seed, back.tries, back.answers);
      return back.before;
    };
    open()
      .then(
        async (all) => {
          if (await noteWhatCame(all, grading)) setCount((n) => n + 1);
        },
        () => {
          setKept(false);
          if (asked !== null) take(asked, [], {});
        },
      )
      .catch(() => undefined);
  }, []);

  const answer = (id: string, value: Given[string] | undefined) => {
    if (value !== undefined) touched.current = true;
    setHeld(null);
    setAnswers((old) => {
      const { [id]: _, ...others } = old;
      return value === undefined ? others : { ...others, [id]: value };
    });
  };
  // Where it cannot be kept, the first taping says so.
  useEffect(() => {
    const begun = { family: draw.family.id, seed: draw.seed, generator: draw.generator, answers };
    if (touched.current) keepBegun(begun).catch(() => undefined);
  }, [draw, answers]);
  const tape = (form: HTMLFormElement) => {
    const stopped = heldBy(form) ?? (Object.keys(answers).length === 0 ? 'nothing' : null);
    setHeld(stopped);
    if (stopped !== null) return;
    setTries((old) => [...old, answers]);
    keepTry(draw, answers, { family, world, language }).then(
      () => {
        setKept(true);
        setCount((n) => n + 1);
      },
      () => setKept(false),
    );
    requestAnimationFrame(() => verdict.current?.focus());
  };
  const anew = () => {
    const next = String(fourFigures());
    touched.current = false;
    history.replaceState(null, '', `?draw=${next}`);
    take(next, [], {});
    dropBegun(family.id).catch(() => undefined);
    requestAnimationFrame(() => verdict.current?.focus());
  };

  return (
    <>
      <p className="lead">{unbroken(textParts(shown.text).lead)}</p>
      <section className="answer" role="status" ref={verdict} tabIndex={-1}>
        <p className="label">
          {tries.length === 0
            ? tell('practicePage.draw', { seed })
            : tell('practicePage.drawTry', { seed, try: tryText(tell, tries.length) })}
        </p>
        <p className="huge">
          {grade === undefined ? tell('practicePage.nothing') : verdictText(tell, grade).line}
        </p>
        {grade !== undefined && <p>{verdictText(tell, grade).rest}</p>}
      </section>
      <ComesAgain family={family.id} tried={tries.length > 0} kept={count} list={list} tell={tell} />
      <div className="columns draw">
        <div>
          <DrawFigures draw={draw} world={world} language={language} />
          <Rework outcomes={found} critical={critical} tell={tell} speak={speak} />
          {tries.length >= 2 && (
            <div className="way">
              <button type="button" className="as-link" aria-expanded={way} onClick={() => setWay(!way)}>
                {tell('practicePage.way')}
              </button>
              {way && (
                <ol className="working">
                  {working.map((text) => (
                    <li key={text}>{unbroken(text)}</li>
                  ))}
                </ol>
              )}
            </div>
          )}
        </div>
        <div>
          <Holds outcomes={found} tell={tell} />
          <Known shown={shown} heading="h2" tell={tell} />
        </div>
        <div>
          <form
            className="asks"
            onSubmit={(event) => {
              event.preventDefault();
              tape(event.currentTarget);
            }}
          >
            {shown.asks.map((ask) => (
              <AskEntry
                key={`${fresh}-${seed}-${ask.id}`}
                ask={ask}
                answer={answers[ask.id]}
                onAnswer={(value) => answer(ask.id, value)}
                draw={draw}
                within={ask.id}
                world={world}
                taped={tapedAt(ask.id)}
                tell={tell}
                speak={speak}
              />
            ))}
            <p className="held" role="status">
              {held !== null && <strong>{tell(`practicePage.held-${held}`)}</strong>}
            </p>
            <div className="buttons">
              <button className="button" type="submit">
                {tell(tries.length === 0 ? 'practicePage.tape' : 'practicePage.tapeAgain')} <Arrow />
              </button>
            </div>
          </form>
          <p className="way off-paper">
            <button type="button" className="as-link" onClick={anew}>
              {tell('practicePage.anew')}
            </button>
          </p>
          <p className="note never">{tell('practicePage.never')}</p>
          {!kept && <p className="nothing">{tell('practicePage.notKept')}</p>}
        </div>
      </div>
    </>
  );
}

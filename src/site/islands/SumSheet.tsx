import { type ReactNode, useEffect, useRef, useState } from 'react';
import { pagePalette } from '../../drawing/palette.ts';
import type { Form } from '../calculators/fields.ts';
import { formOf, type ReadForm, readForm, restated } from '../calculators/form.ts';
import { lettered, measureText } from '../calculators/measure.ts';
import type { FigureHow, Line, Sum } from '../calculators/sum.ts';
import { type Settings, usual } from '../settings.ts';
import { speaker, type Tell, teller, type WordTable } from '../speak.ts';
import { tried } from '../tried.ts';
import { Arrow } from './Arrow.tsx';
import { useExample } from './example.ts';
import { Figure } from './Figure.tsx';
import { Refused } from './Refused.tsx';
import { Answer, ResultRows } from './SumAnswer.tsx';
import { Entries, takenOver } from './SumEntries.tsx';
import { useTakenOver } from './taken.ts';
import { useSettings } from './useSettings.ts';
import { Sources, Worked } from './Worked.tsx';

export interface SumProps<Data> {
  readonly words: WordTable;
  /** What the sum needs of the content. */
  readonly data: Data;
  /** What stands between the answer and its working: cautions. */
  readonly children?: ReactNode;
}

/** The sheet of one sum: answer, figure, what it comes to, the working, the sources, the entries. */
export function SumSheet<Data>({ sum, words, data, children }: SumProps<Data> & { readonly sum: Sum<Data> }) {
  const speak = speaker(words);
  const tell = teller(words);
  const settings = useSettings();
  const form = useRef<HTMLFormElement>(null);
  const [fields, setFields] = useState<Form>(() => formOf(sum.fields, sum.example, usual));
  const [stated, setStated] = useState(usual);
  useTakenOver(form, (values) => setFields((old) => takenOver(sum.fields, old, values, '')));
  useEffect(() => {
    setFields((old) => restated(sum.fields, old, stated, settings));
    setStated(settings);
  }, [sum.fields, settings, stated]);

  const read = readForm(sum.fields, fields, stated);
  const answer = answerOf(sum, data, read);
  const example = formOf(sum.fields, { ...sum.example, ...edition(sum, stated) }, stated);
  const isExample = useExample(JSON.stringify(fields) === JSON.stringify(example));
  const text = (line: Line) => lineText(line, stated, tell);
  const how: Omit<FigureHow, 'form'> = {
    palette: pagePalette,
    speak,
    tell,
    letter: (measure) => lettered(measure, stated, tell),
  };
  const good = answer?.good === true ? answer.value : undefined;
  const drawn =
    good === undefined || sum.figure === undefined
      ? []
      : (['phone', 'desk'] as const).flatMap((draft) => {
          const one = sum.figure?.(good.answered.result, good.given, { ...how, form: draft }, data);
          return one === undefined ? [] : [one];
        });

  return (
    <>
      <section className="answer" aria-live="polite" id="sum-answer">
        {good === undefined ? (
          <>
            <p className="huge">
              {tell(Object.keys(read.messages).length > 0 ? 'sums.look' : 'sums.nothing')}
            </p>
            {answer?.good === false && <Refused faults={answer.faults} tell={tell} />}
          </>
        ) : (
          <Answer
            said={good.said}
            answered={good.answered}
            example={isExample}
            text={text}
            speak={speak}
            tell={tell}
          />
        )}
        <p className="at-phone change">
          <a className="button second" href="#sum-given">
            {tell('sums.change')} <Arrow />
          </a>
        </p>
      </section>
      {children}
      <div className="columns">
        <div>
          {drawn.length > 0 && (
            <Figure drawings={drawn} {...(sum.caption === undefined ? {} : { caption: tell(sum.caption) })} />
          )}
          {good !== undefined && (
            <>
              <ResultRows rows={good.said.rows ?? []} settings={stated} text={text} tell={tell} />
              <h2 className="view-title">{tell('sums.sum')}</h2>
              <Worked steps={good.answered.steps} speak={speak} tell={tell} />
              {stated.metric !== 'none' && <p className="hint">{tell('sums.workedOwn')}</p>}
              {good.answered.sources.length > 0 && (
                <>
                  <h2 className="view-title">{tell('sums.sources')}</h2>
                  <Sources sources={good.answered.sources} tell={tell} />
                </>
              )}
            </>
          )}
        </div>
        <form ref={form} id="sum-given" className="off-paper" onSubmit={(event) => event.preventDefault()}>
          <h2 className="view-title">{tell('sums.yours')}</h2>
          <Entries
            fields={sum.fields}
            form={fields}
            messages={read.messages}
            onForm={setFields}
            settings={stated}
            tell={tell}
            speak={speak}
          />
          <p className="at-phone">
            <a className="button" href="#sum-answer">
              {tell('sums.workOut')} <Arrow />
            </a>
          </p>
        </form>
      </div>
    </>
  );
}

/** The example in the device's edition is the example still. */
function edition<Data>({ fields }: Sum<Data>, settings: Settings): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(fields).flatMap(([name, field]) =>
      field.kind === 'choice' && field.edition === true ? [[name, settings.edition]] : [],
    ),
  );
}

function answerOf<Data>(sum: Sum<Data>, data: Data, { given }: ReadForm) {
  if (given === undefined) return undefined;
  return tried(() => {
    const answered = sum.work(given, data);
    return { given, answered, said: sum.say(answered.result, given, data) };
  });
}

function lineText({ key, values = {} }: Line, settings: Settings, tell: Tell): string {
  const written = Object.entries(values).map(([place, value]) => [
    place,
    typeof value === 'object' ? measureText(value, settings, tell) : value,
  ]);
  return tell(key, Object.fromEntries(written));
}

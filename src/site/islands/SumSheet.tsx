import { type ReactNode, useEffect, useMemo, useRef, useState } from 'react';
import { pagePalette } from '../../drawing/palette.ts';
import { render } from '../../drawing/svg.ts';
import type { Edition } from '../../trade/editions.ts';
import { fieldsOf, shownValues, workOut } from '../calculators/answer.ts';
import type { Fields, Form } from '../calculators/fields.ts';
import { formOf, restated } from '../calculators/form.ts';
import { lettered } from '../calculators/measure.ts';
import type { FigureHow, Line, Sum } from '../calculators/sum.ts';
import type { Settings } from '../settings.ts';
import { speaker, teller, type WordTable } from '../speak.ts';
import { Arrow } from './Arrow.tsx';
import { useExample } from './example.ts';
import { Figure } from './Figure.tsx';
import { Refused } from './Refused.tsx';
import { Answer, ResultRows } from './SumAnswer.tsx';
import { SumForm, takenOver } from './SumEntries.tsx';
import { useTakenOver } from './taken.ts';
import { useSettings } from './useSettings.ts';
import { Sources, Worked } from './Worked.tsx';

export interface SumProps<Data> {
  readonly words: WordTable;
  /** What the sum needs of the content. */
  readonly data: Data;
  /** Edition of the code that the works goes by. */
  readonly edition: Edition;
  /** What stands between the answer and its working: cautions. */
  readonly children?: ReactNode;
}

/** The sheet of one sum: answer, figure, what it comes to, the working, the sources, the entries. */
export function SumSheet<Data>({
  sum,
  words,
  data,
  edition,
  children,
}: SumProps<Data> & { readonly sum: Sum<Data> }) {
  const speak = speaker(words);
  const tell = teller(words);
  const settings = useSettings(edition);
  const element = useRef<HTMLFormElement>(null);
  const fields = useMemo(() => fieldsOf(sum, data), [sum, data]);
  const [form, setForm] = useState<Form>(() => exampleOf(sum, fields, settings));
  const [stated, setStated] = useState(settings);
  useTakenOver(element, (values) => setForm((old) => takenOver(fields, old, values, '')));
  useEffect(() => {
    setForm((old) => restated(fields, old, stated, settings));
    setStated(settings);
  }, [fields, settings, stated]);

  const { messages, answer } = workOut(sum, data, form, stated, tell);
  const isExample = useExample(JSON.stringify(form) === JSON.stringify(exampleOf(sum, fields, stated)));
  const text = (line: Line) => tell(line.key, shownValues(line.values ?? {}, stated, tell));
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
          return one === undefined ? [] : [render(one, { ...how, form: draft })];
        });

  return (
    <>
      <section className="answer" aria-live="polite" id="sum-answer">
        {good === undefined ? (
          <>
            <p className="huge">{tell(Object.keys(messages).length > 0 ? 'sums.look' : 'sums.nothing')}</p>
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
        <SumForm
          element={element}
          title={tell('sums.yours')}
          className="off-paper"
          fields={fields}
          form={form}
          messages={messages}
          onForm={setForm}
          settings={stated}
          tell={tell}
          speak={speak}
        />
      </div>
    </>
  );
}

/** The form that shows the example, in the edition that holds here. */
function exampleOf<Data>({ example }: Sum<Data>, fields: Fields, settings: Settings): Form {
  const edition = Object.entries(fields).flatMap(([name, field]) =>
    field.kind === 'choice' && field.edition === true ? [[name, settings.edition]] : [],
  );
  return formOf(fields, { ...example, ...Object.fromEntries(edition) }, settings);
}

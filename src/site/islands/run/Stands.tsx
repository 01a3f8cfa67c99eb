import { lazy, Suspense } from 'react';
import type { RunFile } from '../../../run/edit/file.ts';
import type { Run } from '../../../run/types.ts';
import type { Say } from '../../../trade/answer.ts';
import { LISTS, limitFields, listFields, startFields, stockFields, tempFields } from '../../run/fields.ts';
import { longAs } from '../../run/lengths.ts';
import { rowLine } from '../../run/rows.ts';
import type { WorkedRun, World } from '../../run/workOut.ts';
import type { Settings } from '../../settings.ts';
import type { Speak, Tell } from '../../speak.ts';
import { About } from './About.tsx';
import { FieldsForm, type Values } from './FieldsForm.tsx';
import { RunList } from './RunList.tsx';

/** Wanted once the first piece is cut, long after the page is opened. */
const BuiltRows = lazy(() => import('./BuiltRows.tsx').then(({ BuiltRows }) => ({ default: BuiltRows })));

interface Props {
  readonly file: RunFile;
  readonly worked: WorkedRun;
  readonly world: World;
  /** Counts up whenever values come from elsewhere than the fields that show them. */
  readonly epoch: number;
  /** `YYYY-MM-DD` on this device. */
  readonly today: string;
  readonly onFile: (file: RunFile, what: Say) => void;
  readonly settings: Settings;
  readonly tell: Tell;
  readonly speak: Speak;
}

/** Everything that stands on a run beside its legs, a row each that opens to its fields. */
export function Stands({ file, worked, world, epoch, today, onFile, settings, tell, speak }: Props) {
  const { run } = file;
  const long = longAs(settings, tell);
  const legs = run.legs.map(({ id }) => id);
  const begunRun = legs.length > 0;
  const changed = (what: string): Say => ({ say: 'yourRun.did-change', values: { what } });
  const editRun = (next: Run, what: Say) => onFile({ ...file, run: next }, what);
  return (
    <>
      <h2 className="view-title">{tell('yourRun.stands')}</h2>
      <div key={epoch}>
        <About file={file} world={world} onFile={(f, what) => onFile(f, changed(what))} tell={tell} />
        <details className="opens">
          <summary>
            {tell('yourRun.start')} <b>{tell(`yourRun.kind-${run.start.kind}`)}</b>
          </summary>
          <div>
            <FieldsForm
              fields={startFields}
              values={run.start as unknown as Values}
              path="start"
              faults={worked.faults}
              onValues={(start) =>
                editRun({ ...run, start: start as unknown as Run['start'] }, changed(tell('yourRun.start')))
              }
              settings={settings}
              tell={tell}
              speak={speak}
            />
          </div>
        </details>
        {begunRun &&
          LISTS.map((list) => (
            <RunList
              key={list}
              name={tell(`yourRun.list-${list}`)}
              list={list}
              hint={tell(`yourRun.listHint-${list}`)}
              rows={(run[list] ?? []) as unknown as readonly Values[]}
              line={(row, k) => rowLine(list, row, k, tell, long)}
              fields={listFields(list, run, world.catalogue)}
              fresh={freshOf(list, legs)}
              faults={worked.faults}
              onRows={(rows, how, k) => {
                const what = tell(`yourRun.one-${list}`, { number: k + 1 });
                editRun(
                  { ...run, [list]: rows },
                  how === 'change' ? changed(what) : { say: `yourRun.did-${how}`, values: { what } },
                );
              }}
              settings={settings}
              tell={tell}
              speak={speak}
            />
          ))}
        {(['limits', 'temps'] as const).map((part) => (
          <details className="opens" key={part}>
            <summary>{tell(`yourRun.${part}`)}</summary>
            <div>
              <FieldsForm
                fields={part === 'limits' ? limitFields : tempFields}
                values={(run[part] ?? {}) as Values}
                path={part}
                faults={worked.faults}
                onValues={(values) => editRun(withPart(run, part, values), changed(tell(`yourRun.${part}`)))}
                settings={settings}
                tell={tell}
                speak={speak}
              />
            </div>
          </details>
        ))}
        <details className="opens">
          <summary>{tell('yourRun.stockAndSaw')}</summary>
          <div>
            <FieldsForm
              fields={stockFields}
              values={pick(run, ['stock', 'kerf'])}
              path=""
              faults={worked.faults}
              onValues={(values) => {
                const { stock: _, kerf: __, ...rest } = run;
                editRun({ ...rest, ...values } as Run, changed(tell('yourRun.stockAndSaw')));
              }}
              settings={settings}
              tell={tell}
              speak={speak}
            />
          </div>
        </details>
        {worked.resolved !== null && worked.takeoff !== null && (
          <details className="opens">
            <summary>
              {tell('yourRun.built')} <b>{file.built.length}</b>
            </summary>
            <div>
              <Suspense>
                <BuiltRows
                  resolved={worked.resolved}
                  file={file}
                  today={today}
                  onBuilt={(built, piece) =>
                    onFile({ ...file, built }, { say: 'yourRun.did-built', values: { piece } })
                  }
                  settings={settings}
                  tell={tell}
                  speak={speak}
                />
              </Suspense>
            </div>
          </details>
        )}
      </div>
    </>
  );
}

const pick = (from: object, names: readonly string[]): Values =>
  Object.fromEntries(Object.entries(from).filter(([name]) => names.includes(name)));

const freshOf = (list: string, legs: readonly string[]): Values => {
  const last = legs.at(-1);
  if (list === 'cables') return { count: 1, to: last };
  if (list === 'marks') return { leg: last, kind: 'step' };
  return { leg: last };
};

/** The run with what it gives of limits or temperatures; nothing given leaves the part out. */
function withPart(run: Run, part: 'limits' | 'temps', values: Values): Run {
  const { [part]: _, ...rest } = run;
  return Object.keys(values).length === 0 ? rest : ({ ...rest, [part]: values } as Run);
}

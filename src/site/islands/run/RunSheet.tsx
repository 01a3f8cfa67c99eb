import { type ReactNode, useEffect, useMemo, useState } from 'react';
import type { RunFile } from '../../../run/edit/file.ts';
import { addLeg, takeOff } from '../../../run/edit/legs.ts';
import type { Run } from '../../../run/types.ts';
import { usualOf } from '../../../run/usual.ts';
import type { Say } from '../../../trade/answer.ts';
import type { Fault } from '../../../trade/given.ts';
import { formatLength } from '../../../trade/length.ts';
import { now } from '../../device/edge.ts';
import { blankOf } from '../../run/blank.ts';
import { faultWords } from '../../run/said.ts';
import { type RunData, worldOf } from '../../run/workOut.ts';
import { speaker, teller, type WordTable } from '../../speak.ts';
import { Arrow } from '../Arrow.tsx';
import { Figure } from '../Figure.tsx';
import { useLater } from '../useLater.ts';
import { useSettings } from '../useSettings.ts';
import { AddLeg } from './AddLeg.tsx';
import { Answer } from './Answer.tsx';
import { Comes } from './Comes.tsx';
import { type Example, Examples } from './Examples.tsx';
import { Findings } from './Findings.tsx';
import { Legs } from './Legs.tsx';
import { SharedRun } from './SharedRun.tsx';
import { useRuns } from './useRuns.ts';
import { useSharedRun } from './useSharedRun.ts';
import { type Draft, useWorkedRun } from './useWorkedRun.ts';

/** None is asked for in the first moments of a page. */
const standsPart = () => import('./Stands.tsx').then(({ Stands }) => Stands);
const sharePart = () => import('./Share.tsx').then(({ Share }) => Share);
const layOutPart = () => import('./LayOut.tsx').then(({ LayOut }) => LayOut);
const keptPart = () => import('./KeptRuns.tsx').then(({ KeptRuns }) => KeptRuns);
const cardPart = () => import('./JobCard.tsx').then(({ JobCard }) => JobCard);

interface Props {
  readonly words: WordTable;
  readonly data: RunData;
  readonly examples: readonly Example[];
  readonly children?: ReactNode;
}

/** Your run: built leg by leg, what it comes to first, then the figure, the list, the entries. */
export default function RunSheet({ words, data, examples, children }: Props) {
  const speak = useMemo(() => speaker(words), [words]);
  const tell = useMemo(() => teller(words), [words]);
  const world = useMemo(() => worldOf(data), [data]);
  const settings = useSettings(data.tables.edition);
  const blank = useMemo(() => blankOf(data), [data]);
  const runs = useRuns(blank);
  const { history, epoch, edit } = runs;
  const file = history.now;
  const { run } = file;
  const [draft, setDraft] = useState<Draft | null>(null);
  const Stands = useLater(standsPart);
  const Card = useLater(cardPart);
  const Share = useLater(sharePart);
  const LayOut = useLater(layOutPart);
  const KeptRuns = useLater(keptPart);
  const [today, setToday] = useState('');
  useEffect(() => setToday(new Date(now()).toISOString().slice(0, 10)), []);

  const read = async (json: unknown): Promise<RunFile | readonly Fault[]> => {
    const { checkRunFile } = await import('../../../schema/runFile.ts');
    const checked = checkRunFile(json, world.catalogue, usualOf(world.tables));
    return 'data' in checked ? (checked.data as RunFile) : checked.faults;
  };
  const { shared, notice, leave } = useSharedRun(read, tell);

  const show = (next: RunFile, id?: number) => {
    runs.show(next, id);
    // Another run begins at its answer, wherever on the page it was asked for.
    requestAnimationFrame(() => document.querySelector('#run-answer')?.scrollIntoView());
  };
  const { worked, drawn } = useWorkedRun(shared ?? file, draft, world, tell, speak);

  const editRun = (next: Run, what: Say, fresh?: 'fresh') => edit({ ...file, run: next }, what, fresh);
  const changed = (what: string): Say => ({ say: 'yourRun.did-change', values: { what } });
  const last = history.past.at(-1)?.what;
  const next = history.ahead[0]?.what;
  const begunRun = run.legs.length > 0;

  const openExample = (example: Example) =>
    void read(example.json).then((given) => {
      if (!('v' in given)) return;
      const { number, name, tags } = example;
      show({ ...given, number, name, tags });
    });

  if (shared !== null) {
    return (
      <SharedRun
        file={shared}
        onKeep={() => {
          leave();
          show(shared);
        }}
        onLeave={leave}
        {...{ worked, drawn, world, settings, tell, speak }}
      />
    );
  }
  return (
    <>
      <div className="run-screen">
        <Answer file={file} worked={worked} settings={settings} tell={tell} />
        {notice.map((line) => (
          <p className="message" key={line} role="alert">
            <strong>{line}</strong>
          </p>
        ))}
        {begunRun && worked.faults.length > 0 && (
          <div className="message" role="alert">
            <p>
              <strong>{tell('yourRun.notYet')}</strong>
            </p>
            <ul>
              {worked.faults.map((fault) => (
                <li key={`${fault.field} ${fault.message}`}>{faultWords(fault, tell)}</li>
              ))}
            </ul>
          </div>
        )}
        {begunRun && LayOut !== null && (
          <LayOut
            run={run}
            data={data}
            settings={settings}
            onLaid={(laid) => editRun(laid, { say: 'yourRun.did-layOut', values: {} }, 'fresh')}
            tell={tell}
            speak={speak}
          />
        )}
        {!begunRun && examples.length > 0 && (
          <details className="opens off-paper">
            <summary>
              {tell('yourRun.beginExample')} <b>{examples.length}</b>
            </summary>
            <div>
              <Examples examples={examples} onExample={openExample} />
            </div>
          </details>
        )}
        {children}
        <div className={begunRun ? 'run-columns' : ''}>
          <div className="run-figure">
            {drawn.isometric.length > 0 && (
              <Figure
                drawings={drawn.isometric}
                caption={tell(draft === null ? 'yourRun.caption' : 'yourRun.captionDraft')}
              />
            )}
            {begunRun && (
              <p className="at-phone change">
                <a className="button second" href="#add-leg">
                  {tell('yourRun.goAdd')} <Arrow />
                </a>
              </p>
            )}
          </div>
          {begunRun && (
            <section className="run-comes">
              <h2 className="view-title">{tell('yourRun.comes')}</h2>
              <Findings
                worked={worked}
                drawings={drawn.isometric}
                settings={settings}
                tell={tell}
                speak={speak}
              />
              <Comes
                worked={worked}
                file={file}
                world={world}
                settings={settings}
                tell={tell}
                speak={speak}
              />
            </section>
          )}
          <div className="run-legs">
            {begunRun && (
              <>
                <h2 className="view-title">
                  {tell('yourRun.legs')} <span className="label">{tell('yourRun.legsNote')}</span>
                </h2>
                <Legs
                  run={run}
                  resolved={worked.resolved}
                  drawings={drawn.isometric}
                  catalogue={world.catalogue}
                  faults={worked.faults}
                  epoch={epoch}
                  settings={settings}
                  onLeg={(k, leg) =>
                    editRun(
                      {
                        ...run,
                        legs: run.legs.map((old, i) => (i === k ? (leg as unknown as typeof old) : old)),
                      },
                      changed(tell('yourRun.leg', { leg: run.legs[k]?.id ?? '' })),
                    )
                  }
                  onOff={(id) =>
                    editRun(takeOff(run, id), { say: 'yourRun.did-legOff', values: { leg: id } }, 'fresh')
                  }
                  tell={tell}
                  speak={speak}
                />
              </>
            )}
            <AddLeg
              run={run}
              catalogue={world.catalogue}
              onDraft={setDraft}
              onAdd={(choice, length) => {
                const longer = addLeg(run, choice, length);
                editRun(longer, {
                  say: 'yourRun.did-leg',
                  values: { leg: longer.legs.at(-1)?.id ?? '', length: formatLength(length) },
                });
              }}
              tell={tell}
              speak={speak}
            />
            <div className="buttons undo off-paper">
              {last !== undefined && (
                <button type="button" className="button second" onClick={runs.undo}>
                  {tell('yourRun.undo', { what: speak(last) })} <Arrow />
                </button>
              )}
              {next !== undefined && (
                <button type="button" className="button second" onClick={runs.redo}>
                  {tell('yourRun.redo', { what: speak(next) })} <Arrow />
                </button>
              )}
            </div>
          </div>
        </div>
        {drawn.strip.length > 0 && <Figure drawings={drawn.strip} />}
        {begunRun && (
          <div className="buttons off-paper">
            <button
              type="button"
              className="button second"
              data-print
              disabled={worked.takeoff === null || Card === null}
              onClick={() => window.print()}
            >
              {tell('yourRun.print')} <Arrow />
            </button>
          </div>
        )}
        {Stands !== null && (
          <Stands
            file={file}
            worked={worked}
            world={world}
            epoch={epoch}
            today={today}
            onFile={edit}
            {...{ settings, tell, speak }}
          />
        )}
        {!runs.stays && <p className="nothing">{tell('yourRun.notKept')}</p>}
        {Share !== null && (
          <Share
            file={file}
            json={async () => {
              const { runFileJson } = await import('../../../schema/runFile.ts');
              const whole = runFileJson(file) as { readonly run: unknown };
              return { file: whole, run: whole.run };
            }}
            onRead={async (json) => {
              const given = await read(json);
              if (!('v' in given)) return given;
              show(given);
              return [];
            }}
            tell={tell}
          />
        )}
        {KeptRuns !== null && (
          <KeptRuns
            kept={runs.kept}
            open={runs.open}
            examples={begunRun ? examples : []}
            onOpen={(id) => {
              const found = runs.kept.find((one) => one.id === id);
              if (found !== undefined) show(found.file, id);
            }}
            onNew={() => show(blank)}
            onCopy={() =>
              runs.show({ ...file, name: tell('yourRun.copyOf', { name: file.name || file.number }) })
            }
            onRemove={runs.remove}
            onExample={openExample}
            tell={tell}
          />
        )}
      </div>
      {begunRun && Card !== null && (
        <Card
          worked={worked}
          file={file}
          world={world}
          today={today}
          settings={settings}
          tell={tell}
          speak={speak}
        />
      )}
    </>
  );
}

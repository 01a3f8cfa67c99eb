import { type ReactNode, useEffect, useMemo, useState } from 'react';
import { drawIsometric } from '../../../drawing/isometric/isometric.ts';
import { pagePalette } from '../../../drawing/palette.ts';
import { render } from '../../../drawing/svg.ts';
import type { Drawing, How } from '../../../drawing/types.ts';
import { layUnfolded } from '../../../drawing/unfolded/unfolded.ts';
import type { RunFile } from '../../../run/edit/file.ts';
import { addLeg, takeOff } from '../../../run/edit/legs.ts';
import type { WayOutChoice } from '../../../run/edit/ways.ts';
import type { takeoff } from '../../../run/takeoff.ts';
import type { Run } from '../../../run/types.ts';
import { usualOf } from '../../../run/usual.ts';
import type { Say } from '../../../trade/answer.ts';
import type { Fault } from '../../../trade/given.ts';
import { formatLength, type Ticks, ticks } from '../../../trade/length.ts';
import { now } from '../../device/edge.ts';
import { LISTS, limitFields, listFields, startFields, stockFields, tempFields } from '../../run/fields.ts';
import { unpacked } from '../../run/link.ts';
import { rowLine } from '../../run/rows.ts';
import { counted, trayWords } from '../../run/words.ts';
import { type RunData, workOut, worldOf } from '../../run/workOut.ts';
import { speaker, type Tell, teller, type WordTable } from '../../speak.ts';
import { Arrow } from '../Arrow.tsx';
import { Figure } from '../Figure.tsx';
import { TextField } from '../TextField.tsx';
import { AddLeg } from './AddLeg.tsx';
import { BuiltRows } from './BuiltRows.tsx';
import { Comes } from './Comes.tsx';
import { FieldsForm, type Values } from './FieldsForm.tsx';
import { Findings } from './Findings.tsx';
import { JobCard, tagsOf } from './JobCard.tsx';
import { type Example, KeptRuns } from './KeptRuns.tsx';
import { LayOut } from './LayOut.tsx';
import { Legs } from './Legs.tsx';
import { RunList } from './RunList.tsx';
import { Share } from './Share.tsx';
import { useRuns } from './useRuns.ts';

interface Props {
  readonly words: WordTable;
  readonly data: RunData;
  readonly examples: readonly Example[];
  readonly children?: ReactNode;
}

/** How long cutting plans are looked for while a run is being built, ms. */
const PLAN_MS = 40;
const FORMS = ['phone', 'desk'] as const;

const untilLate = () => {
  const begun = now();
  return { stop: () => now() - begun > PLAN_MS };
};

function blankOf({ items }: RunData): RunFile {
  const trays = items.filter(({ kind }) => kind === 'tray');
  const tray = trays.find(({ id }) => id === 'card-4') ?? trays[0];
  return {
    v: 1,
    kind: 'run',
    number: '',
    name: '',
    place: '',
    crew: '',
    tags: { start: '', ends: {} },
    run: { v: 1, tray: tray?.id ?? '', start: { kind: 'ladder', joint: 'socketed' }, legs: [] },
    built: [],
  };
}

/** Your run: built leg by leg, what it comes to first, then the figure, the list, the entries. */
export default function RunSheet({ words, data, examples, children }: Props) {
  const speak = useMemo(() => speaker(words), [words]);
  const tell = useMemo(() => teller(words), [words]);
  const world = useMemo(() => worldOf(data), [data]);
  const blank = useMemo(() => blankOf(data), [data]);
  const runs = useRuns(blank);
  const { history, epoch, edit } = runs;
  const file = history.now;
  const { run } = file;
  const [draft, setDraft] = useState<{ choice: WayOutChoice; length: Ticks } | null>(null);
  const [shared, setShared] = useState<RunFile | null>(null);
  const [notice, setNotice] = useState<readonly string[]>([]);
  const [today, setToday] = useState('');
  const [take, setTake] = useState<typeof takeoff | null>(null);
  useEffect(() => {
    void import('../../../run/takeoff.ts').then((part) => setTake(() => part.takeoff));
  }, []);
  useEffect(() => setToday(new Date(now()).toISOString().slice(0, 10)), []);

  const read = async (json: unknown): Promise<RunFile | readonly Fault[]> => {
    const { checkRunFile } = await import('../../../schema/runFile.ts');
    const checked = checkRunFile(json, world.catalogue, usualOf(world.tables));
    return 'data' in checked ? (checked.data as RunFile) : checked.faults;
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: the address is read once
  useEffect(() => {
    const open = async () => {
      const found = await unpacked(window.location.hash);
      if (found.found === 'none') return;
      if (found.found !== 'json') return setNotice([tell(`yourRun.link-${found.found}`)]);
      const given = await read(found.json);
      if ('v' in given) setShared(given);
      else setNotice([tell('yourRun.link-broken'), ...given.map((f) => faultWords(f, tell))]);
    };
    void open();
    // A link opened in a page that shows a run already changes the address alone.
    const opened = () => void open();
    window.addEventListener('hashchange', opened);
    return () => window.removeEventListener('hashchange', opened);
  }, []);

  const show = (next: RunFile, id?: number) => {
    runs.show(next, id);
    // Another run begins at its answer, wherever on the page it was asked for.
    requestAnimationFrame(() => document.querySelector('#run-answer')?.scrollIntoView());
  };
  const shown = shared ?? file;
  const worked = useMemo(
    () => guarded(() => workOut(shown.run, world, untilLate(), take), tell),
    [shown.run, world, take, tell],
  );
  const findings = worked.inspected?.result.findings ?? [];
  const drawn = useMemo((): { isometric: readonly Drawing[]; strip: readonly Drawing[] } => {
    const added =
      draft === null
        ? null
        : guarded(() => workOut(addLeg(shown.run, draft.choice, draft.length), world, {}, null), tell);
    const resolved = added?.resolved ?? worked.resolved;
    if (resolved === null) return { isometric: [], strip: [] };
    const phantom = added?.resolved == null ? {} : { phantom: resolved.run.legs.at(-1)?.id };
    const given = { resolved, findings, tags: tagsOf(shown), ...phantom };
    const drawn = (draw: (how: How) => Drawing) =>
      FORMS.map((form) => draw({ form, palette: pagePalette, speak }));
    return {
      isometric: drawn((how) => drawIsometric(given, how)),
      strip: drawn((how) => render(layUnfolded(given, how), how)),
    };
  }, [shown, draft, worked, findings, world, speak, tell]);

  const editRun = (next: Run, what: Say, fresh?: 'fresh') => edit({ ...file, run: next }, what, fresh);
  const changed = (what: string): Say => ({ say: 'yourRun.did-change', values: { what } });
  const legs = run.legs.map(({ id }) => id);
  const last = history.past.at(-1)?.what;
  const next = history.ahead[0]?.what;
  const begunRun = run.legs.length > 0;

  if (shared !== null) {
    const keep = () => {
      window.history.replaceState(null, '', window.location.pathname);
      show(shared);
      setShared(null);
    };
    const leave = () => {
      window.history.replaceState(null, '', window.location.pathname);
      setShared(null);
    };
    return (
      <div className="run-screen">
        <Answer file={shared} worked={worked} tell={tell} />
        <div className="buttons">
          <button type="button" className="button" onClick={keep}>
            {tell('yourRun.keepIt')} <Arrow />
          </button>
          <button type="button" className="button second" onClick={leave}>
            {tell('yourRun.leaveIt')} <Arrow />
          </button>
        </div>
        <p className="note">{tell('yourRun.sharedNote')}</p>
        <Figure drawings={drawn.isometric} caption={tell('yourRun.caption')} />
        <Findings findings={findings} drawings={drawn.isometric} tell={tell} speak={speak} />
        <Comes worked={worked} file={shared} world={world} tell={tell} speak={speak} />
      </div>
    );
  }
  return (
    <>
      <div className="run-screen">
        <Answer file={file} worked={worked} tell={tell} />
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
              <Findings findings={findings} drawings={drawn.isometric} tell={tell} speak={speak} />
              <Comes worked={worked} file={file} world={world} tell={tell} speak={speak} />
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
          <>
            <LayOut
              run={run}
              data={data}
              onLaid={(laid) => editRun(laid, { say: 'yourRun.did-layOut', values: {} }, 'fresh')}
              tell={tell}
              speak={speak}
            />
            <div className="buttons off-paper">
              <button
                type="button"
                className="button second"
                data-print
                disabled={worked.takeoff === null}
                onClick={() => window.print()}
              >
                {tell('yourRun.print')} <Arrow />
              </button>
            </div>
          </>
        )}
        <h2 className="view-title">{tell('yourRun.stands')}</h2>
        <div key={epoch}>
          <About file={file} world={world} onFile={(f, what) => edit(f, changed(what))} tell={tell} />
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
                legs={legs}
                onValues={(start) =>
                  editRun({ ...run, start: start as unknown as Run['start'] }, changed(tell('yourRun.start')))
                }
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
                line={(row, k) => rowLine(list, row, k, tell)}
                fields={listFields(list, run, world.catalogue)}
                fresh={freshOf(list, legs)}
                faults={worked.faults}
                legs={legs}
                onRows={(rows, how, k) => {
                  const what = tell(`yourRun.one-${list}`, { number: k + 1 });
                  editRun(
                    { ...run, [list]: rows },
                    how === 'change' ? changed(what) : { say: `yourRun.did-${how}`, values: { what } },
                  );
                }}
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
                  legs={legs}
                  onValues={(values) =>
                    editRun(withPart(run, part, values), changed(tell(`yourRun.${part}`)))
                  }
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
                legs={legs}
                onValues={(values) => {
                  const { stock: _, kerf: __, ...rest } = run;
                  editRun({ ...rest, ...values } as Run, changed(tell('yourRun.stockAndSaw')));
                }}
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
                <BuiltRows
                  resolved={worked.resolved}
                  file={file}
                  today={today}
                  onBuilt={(built, piece) =>
                    edit({ ...file, built }, { say: 'yourRun.did-built', values: { piece } })
                  }
                  tell={tell}
                  speak={speak}
                />
              </div>
            </details>
          )}
        </div>
        {!runs.stays && <p className="nothing">{tell('yourRun.notKept')}</p>}
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
        <KeptRuns
          kept={runs.kept}
          open={runs.open}
          examples={examples}
          onOpen={(id) => {
            const found = runs.kept.find((one) => one.id === id);
            if (found !== undefined) show(found.file, id);
          }}
          onNew={() => show(blank)}
          onCopy={() =>
            runs.show({ ...file, name: tell('yourRun.copyOf', { name: file.name || file.number }) })
          }
          onRemove={runs.remove}
          onExample={(example) => {
            void read(example.json).then((given) => {
              if (!('v' in given)) return;
              const { number, name, tags } = example;
              show({ ...given, number, name, tags });
            });
          }}
          tell={tell}
        />
      </div>
      {begunRun && (
        <JobCard worked={worked} file={file} world={world} today={today} tell={tell} speak={speak} />
      )}
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

/** `Leg 2, length: …`, where the page can say it; else the field as the file has it. */
function faultWords({ field, message, todo }: Fault, tell: Tell): string {
  const [, list, k, name] = /^(\w+)\[(\d+)\](?:\.(\w+))?/.exec(field) ?? [];
  const known = ['legs', ...LISTS] as const;
  const found = known.find((one) => one === list);
  const where =
    found === undefined
      ? field
      : `${tell(`yourRun.one-${found}`, { number: Number(k) + 1 })}${name === undefined ? '' : ` (${name})`}`;
  return tell('yourRun.faultAt', { where, message, todo });
}

interface AnswerProps {
  readonly file: RunFile;
  readonly worked: ReturnType<typeof workOut>;
  readonly tell: Tell;
}

/** A run that trips the working itself must not take the page and all other runs with it. */
function guarded(act: () => ReturnType<typeof workOut>, tell: Tell): ReturnType<typeof workOut> {
  try {
    return act();
  } catch (cause) {
    const message = tell('yourRun.broke', { why: String(cause) });
    const faults = [{ field: 'run', message, todo: tell('yourRun.brokeTodo') }];
    return { resolved: null, inspected: null, takeoff: null, faults };
  }
}

/** One line: what it takes, and what is wrong with it. */
function Answer({ file, worked, tell }: AnswerProps) {
  const { resolved, takeoff, inspected } = worked;
  const tags = Object.values(file.tags.ends).filter((tag) => tag !== '');
  const whole = file.run.legs.reduce((sum, { length }) => sum + length, 0);
  const label = [
    [file.number, file.name].filter((text) => text !== '').join(' · '),
    file.tags.start !== '' && tags.length > 0
      ? tell('yourRun.fromTo', { from: file.tags.start, to: tags.join(', ') })
      : '',
    whole > 0 ? formatLength(ticks(whole)) : '',
  ].filter((text) => text !== '');
  const lines = () => {
    if (file.run.legs.length === 0) return [tell('yourRun.nothing')];
    if (resolved === null || inspected === null) return [tell('yourRun.look')];
    const pieces = resolved.legs.reduce((sum, leg) => sum + leg.pieces.length, 0);
    const used = takeoff?.result.sticks.reduce((sum, { lengthsUsed }) => sum + (lengthsUsed ?? 0), 0);
    const wrong = inspected.result.findings.length;
    return [
      used === undefined
        ? tell(`yourRun.only-${counted(pieces)}`, { pieces })
        : tell(`yourRun.pieces-${counted(pieces)}`, { pieces }),
      ...(used === undefined ? [] : [tell(`yourRun.sticks-${counted(used)}`, { sticks: used })]),
      wrong === 0 ? tell('yourRun.wrong-none') : tell(`yourRun.wrong-${counted(wrong)}`, { count: wrong }),
    ];
  };
  return (
    <section className="answer" aria-live="polite" id="run-answer">
      {label.length > 0 && <p className="label">{label.join(', ')}</p>}
      <p className="huge">
        {lines().map((line) => (
          <span key={line}>
            <span className="together">{line}</span>{' '}
          </span>
        ))}
      </p>
    </section>
  );
}

interface AboutProps {
  readonly file: RunFile;
  readonly world: ReturnType<typeof worldOf>;
  readonly onFile: (file: RunFile, what: string) => void;
  readonly tell: Tell;
}

/** What stands on the sheet beside the run, and which channel it is of. */
function About({ file, world, onFile, tell }: AboutProps) {
  const trays = [...world.catalogue.values()].flatMap((item) => (item.kind === 'tray' ? [item] : []));
  const ends = file.run.legs.filter(
    ({ id }) => !file.run.legs.some(({ from }) => from === id || from.startsWith(`${id}:`)),
  );
  const own = trays.find(({ id }) => id === file.run.tray);
  return (
    <details className="opens" open={file.run.legs.length === 0 ? true : undefined}>
      <summary>
        {tell('yourRun.about')} <b>{own === undefined ? '' : trayWords(own, tell)}</b>
      </summary>
      <div className="fields run-fields">
        <div>
          <label htmlFor="run-tray">{tell('yourRun.channel')}</label>
          <select
            id="run-tray"
            value={file.run.tray}
            onChange={(event) =>
              onFile(
                { ...file, run: { ...file.run, tray: event.currentTarget.value } },
                tell('yourRun.channel'),
              )
            }
          >
            {trays.map((tray) => (
              <option key={tray.id} value={tray.id}>
                {trayWords(tray, tell)}
              </option>
            ))}
          </select>
        </div>
        {(['number', 'name', 'place', 'crew'] as const).map((part) => (
          <TextField
            key={part}
            id={`run-${part}`}
            label={tell(`yourRun.about-${part}`)}
            value={file[part]}
            onValue={(value) =>
              onFile({ ...file, [part]: value.slice(0, 200) }, tell(`yourRun.about-${part}`))
            }
          />
        ))}
        <TextField
          id="run-tag-start"
          label={tell('yourRun.tagStart')}
          value={file.tags.start}
          onValue={(start) =>
            onFile({ ...file, tags: { ...file.tags, start: start.slice(0, 200) } }, tell('yourRun.tagStart'))
          }
        />
        {ends.map(({ id }) => (
          <TextField
            key={id}
            id={`run-tag-${id}`}
            label={tell('yourRun.tagEnd', { leg: id })}
            value={file.tags.ends[id] ?? ''}
            onValue={(tag) =>
              onFile(
                { ...file, tags: { ...file.tags, ends: { ...file.tags.ends, [id]: tag.slice(0, 200) } } },
                tell('yourRun.tagEnd', { leg: id }),
              )
            }
          />
        ))}
      </div>
    </details>
  );
}

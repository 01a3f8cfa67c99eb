import { memo, useMemo } from 'react';
import { drawIsometric } from '../../../drawing/isometric/isometric.ts';
import { paperPalette } from '../../../drawing/palette.ts';
import { safetyTriangle } from '../../../drawing/signs.ts';
import { render } from '../../../drawing/svg.ts';
import { layUnfolded } from '../../../drawing/unfolded/unfolded.ts';
import type { RunFile } from '../../../run/edit/file.ts';
import type { Finding } from '../../../run/inspect/finding.ts';
import type { ResolvedRun } from '../../../run/resolved.ts';
import { spanLimit } from '../../../run/spanLimit.ts';
import type { Takeoff } from '../../../run/takeoff.ts';
import type { Ticks } from '../../../trade/length.ts';
import { measureText, temperature } from '../../calculators/measure.ts';
import { type JobCard as JobCardRows, jobCard } from '../../run/jobCard.ts';
import { longAs } from '../../run/lengths.ts';
import { hardwareWords, tagsOf } from '../../run/said.ts';
import { counted, trayWords } from '../../run/words.ts';
import type { WorkedRun, World } from '../../run/workOut.ts';
import type { Settings } from '../../settings.ts';
import type { Speak, Tell } from '../../speak.ts';
import { CardLists } from './CardLists.tsx';
import { CardSheet } from './CardSheet.tsx';
import { CutTable, JumperLine, NeedsTable, SpliceTable, SupportTable } from './CardTables.tsx';

interface Props {
  readonly worked: WorkedRun;
  readonly file: RunFile;
  readonly world: World;
  readonly today: string;
  readonly settings: Settings;
  readonly tell: Tell;
  readonly speak: Speak;
}

/** Width of the strip across the sheet, mm. */
const STRIP = 181;

/**
 * One sheet of paper, A4 or Letter, black on white: all that a crew needs of this run; what it cannot hold goes on behind it.
 * Only paper shows it. As on a drawing, a length has one unit: metric where the device shows metric instead.
 */
export const JobCard = memo(function JobCard({ worked, ...rest }: Props) {
  const { resolved, takeoff, inspected } = worked;
  if (resolved === null || takeoff === null || inspected === null) return null;
  return <Card resolved={resolved} takeoff={takeoff.result} findings={inspected.result.findings} {...rest} />;
});

interface CardProps extends Omit<Props, 'worked'> {
  readonly resolved: ResolvedRun;
  readonly takeoff: Takeoff;
  readonly findings: readonly Finding[];
}

function Card({ resolved, takeoff, findings, file, world, today, settings: device, tell, speak }: CardProps) {
  const settings: Settings = device.metric === 'beside' ? { ...device, metric: 'none' } : device;
  const { tags } = file;
  const bars = useMemo(
    () =>
      layUnfolded(
        { resolved, findings, tags: tagsOf({ tags }), bare: true },
        { form: 'paper', palette: paperPalette, speak },
      ),
    [resolved, findings, tags, speak],
  );
  const about = aboutOf(file, resolved, tell);
  const card = jobCard(
    resolved,
    takeoff,
    findings,
    file,
    { settings, tell, speak },
    { about: about.map(({ name, text }) => `${name} ${text}`), strip: (bars.height / bars.width) * STRIP },
  );
  const { rows, setting } = card;
  const numbered = rows.findings.length;
  const isometric = useMemo(
    () =>
      drawIsometric(
        { resolved, findings: findings.slice(0, numbered), tags: tagsOf({ tags }) },
        { form: 'phone', palette: paperPalette, speak },
      ),
    [resolved, findings, numbered, tags, speak],
  );
  const strip = setting.strip ? render(bars, { form: 'paper', palette: paperPalette, speak }) : null;
  const title = file.number === '' ? file.name || tell('yourRun.aRun') : file.number;
  const sheets = card.lists.length + 1;
  const sheet = { file, title, today, count: sheets, tell };
  const rest = [
    ...new Set(
      card.lists.flatMap((list) =>
        Object.entries(list).flatMap(([part, all]) => (all.length > 0 ? [part] : [])),
      ),
    ),
  ];
  return (
    <>
      <CardSheet {...sheet} number={1}>
        <p className="card-warn">{tell('sheet.notForConstruction')}</p>
        <h2>{[title, file.number === '' ? '' : file.name].filter((t) => t !== '').join(' · ')}</h2>
        <p className="card-top">
          {about.map(({ name, text }) => (
            <span key={name}>
              <b>{name}</b> {text}
            </span>
          ))}
        </p>
        {findings.length > 0 && (
          <div className={setting.short ? 'card-findings short' : 'card-findings'}>
            <b>{tell(`yourRun.wrong-${counted(findings.length)}`, { count: findings.length })}</b>
            {rows.findings.map(({ number, text, short }) => (
              <span key={number}>
                {tell('yourRun.numbered', { number, text: setting.short ? short : text })}
              </span>
            ))}
          </div>
        )}
        <div className={`card-figure${setting.wide ? ' wide' : ''}${setting.tight ? ' tight' : ''}`}>
          {/* biome-ignore lint/security/noDangerouslySetInnerHtml: src/drawing escapes every text */}
          <div className="drawn" dangerouslySetInnerHTML={{ __html: isometric.svg }} />
          <div className="card-lists">
            <div>
              <CutTable cuts={rows.cuts} tell={tell} />
            </div>
            {rows.splices.length > 0 && (
              <div>
                <SpliceTable splices={rows.splices} tell={tell} />
              </div>
            )}
          </div>
        </div>
        {strip !== null && (
          // biome-ignore lint/security/noDangerouslySetInnerHtml: src/drawing escapes every text
          <div className="card-strip" dangerouslySetInnerHTML={{ __html: strip.svg }} />
        )}
        <SupportTable supports={rows.supports} tell={tell} />
        <JumperLine jumpers={rows.jumpers} tell={tell} />
        {rest.length > 0 && (
          <p className="card-left">
            {tell('yourRun.goesOn', {
              count: sheets,
              what: rest.map((part) => tell(`yourRun.rest-${part as 'cuts'}`)).join(', '),
            })}
          </p>
        )}
        <div className="card-caution">
          <p>
            {/* biome-ignore lint/security/noDangerouslySetInnerHtml: a sign of ours */}
            <span dangerouslySetInnerHTML={{ __html: safetyTriangle('#000') }} />
            {tell('yourRun.caution')}
          </p>
          <p>{tell('yourRun.cautionWords')}</p>
        </div>
        <h3>{tell('yourRun.order')}</h3>
        <Order card={card} resolved={resolved} world={world} settings={settings} tell={tell} />
        <p className="card-hold">
          <b>{tell('yourRun.hold')}</b>
          <span>{tell(findings.length > 0 ? 'yourRun.holdWrong' : 'yourRun.holdWords')}</span>
          <i className="initial" />
        </p>
        <h3>
          {tell('yourRun.needs')} <span>{tell('yourRun.needsLine')}</span>
        </h3>
        <p className="card-tasks">
          {card.needs.map((task) => (
            <span key={task}>
              <b>{task}</b> {speak({ say: `${task}.name` })}
            </span>
          ))}
        </p>
        <NeedsTable needs={card.needs} crew={rows.crew} tell={tell} />
        <p className="card-signs">
          <span>{tell('yourRun.done')}</span>
          <span>{tell('yourRun.witness')}</span>
          <span>{tell('yourRun.taken')}</span>
        </p>
      </CardSheet>
      <CardLists lists={card.lists} needs={card.needs} sheet={sheet} tell={tell} />
    </>
  );
}

interface OrderProps {
  readonly card: JobCardRows;
  readonly resolved: ResolvedRun;
  readonly world: World;
  readonly settings: Settings;
  readonly tell: Tell;
}

/** The order of the work, a box to initial at each; in two columns where room is short. */
function Order({ card, resolved, world, settings, tell }: OrderProps) {
  const limits = resolved.legs.flatMap((leg) => spanLimit(leg, resolved).limit ?? []);
  const span = limits.length === 0 ? '' : longAs(settings, tell)(Math.min(...limits) as Ticks);
  const temps = resolved.run.temps;
  const now = temps === undefined ? '' : measureText(temperature(temps.nowF), settings, tell);
  const fit = card.fittings
    .map(({ item, count }) =>
      tell('yourRun.times', { count, what: hardwareWords(item, world.catalogue, tell) }),
    )
    .join(', ');
  const words = (step: JobCardRows['steps'][number]): string => {
    if (step === 'hang' && span === '') return tell('yourRun.step-hangPlain');
    if (step === 'gap' && now === '') return tell('yourRun.step-gapPlain');
    return tell(`yourRun.step-${step}`, { span, fit, now });
  };
  return (
    <ol className={card.setting.dense ? 'card-order dense' : 'card-order'}>
      {card.steps.map((step, k) => (
        <li key={step}>
          <b>{k + 1}</b>
          <span>{words(step)}</span>
          <i className="initial" />
        </li>
      ))}
    </ol>
  );
}

/** What stands under the heading. */
function aboutOf(file: RunFile, { start, tray }: ResolvedRun, tell: Tell) {
  const blank = '________________';
  const ends = Object.values(file.tags.ends).filter((tag) => tag !== '');
  return [
    { name: tell('yourRun.where'), text: file.place || blank },
    { name: tell('yourRun.size'), text: trayWords(tray, tell) },
    { name: tell('yourRun.crew'), text: file.crew || blank },
    { name: tell('yourRun.from'), text: file.tags.start || tell(`yourRun.kind-${start.kind}`) },
    { name: tell('yourRun.toEnd'), text: ends.join(', ') || endsWords(file, tell) },
  ];
}

function endsWords({ run }: RunFile, tell: Tell): string {
  const kinds = (run.ends ?? [])
    .filter(({ kind }) => kind !== 'free')
    .map(({ kind }) => tell(`yourRun.kind-${kind}`));
  return kinds.length === 0 ? tell('yourRun.kind-free') : kinds.join(', ');
}

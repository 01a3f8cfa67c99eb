import { drawIsometric } from '../../../drawing/isometric/isometric.ts';
import { paperPalette } from '../../../drawing/palette.ts';
import { logo, safetyTriangle } from '../../../drawing/signs.ts';
import type { RunFile } from '../../../run/edit/file.ts';
import { spanLimit } from '../../../run/spanLimit.ts';
import type { Ticks } from '../../../trade/length.ts';
import { shortLength } from '../../../trade/shortLength.ts';
import { dayText } from '../../dates.ts';
import { jobCard } from '../../run/jobCard.ts';
import { findingPlace, hardwareWords, jumperPlace } from '../../run/said.ts';
import { trayWords } from '../../run/words.ts';
import type { WorkedRun, World } from '../../run/workOut.ts';
import type { Speak, Tell } from '../../speak.ts';

interface Props {
  readonly worked: WorkedRun;
  readonly file: RunFile;
  readonly world: World;
  readonly today: string;
  readonly tell: Tell;
  readonly speak: Speak;
}

/** One sheet of paper, A4 or Letter, black on white: all that a crew needs of this run. Only paper shows it. */
export function JobCard({ worked, file, world, today, tell, speak }: Props) {
  const { resolved, takeoff, inspected } = worked;
  if (resolved === null || takeoff === null || inspected === null) return null;
  const findings = inspected.result.findings;
  const card = jobCard(resolved, takeoff.result, findings, file);
  const how = { form: 'phone', palette: paperPalette, speak } as const;
  const isometric = drawIsometric({ resolved, findings: card.findings, tags: tagsOf(file) }, how);
  const title = file.number === '' ? file.name || tell('yourRun.aRun') : file.number;
  const limits = resolved.legs.flatMap((leg) => spanLimit(leg, resolved).limit ?? []);
  const span = limits.length === 0 ? '' : shortLength(Math.min(...limits) as Ticks);
  const left = Object.entries(card.left).filter(([, count]) => count > 0);
  const fit = card.fittings
    .map(({ item, count }) =>
      tell('yourRun.times', { count, what: hardwareWords(item, world.catalogue, tell) }),
    )
    .join(', ');
  const ends = Object.values(file.tags.ends).filter((tag) => tag !== '');
  return (
    <article className="job-card" aria-label={tell('yourRun.jobCard')}>
      <header>
        {/* biome-ignore lint/security/noDangerouslySetInnerHtml: our own mark */}
        <span dangerouslySetInnerHTML={{ __html: logo(paperPalette) }} />
        <b>{tell('sheet.name')}</b>
        <span>{tell('yourRun.jobCardOf', { title })}</span>
      </header>
      <div className="card-body">
        <p className="card-warn">{tell('sheet.notForConstruction')}</p>
        <h2>{[title, file.number === '' ? '' : file.name].filter((t) => t !== '').join(' · ')}</h2>
        <p className="card-top">
          <span>
            <b>{tell('yourRun.where')}</b> {file.place || '________________'}
          </span>
          <span>
            <b>{tell('yourRun.size')}</b> {trayWords(resolved.tray, tell)}
          </span>
          <span>
            <b>{tell('yourRun.crew')}</b> {file.crew || '________________'}
          </span>
          <span>
            <b>{tell('yourRun.from')}</b> {file.tags.start || tell(`yourRun.kind-${resolved.start.kind}`)}{' '}
            <b>{tell('yourRun.toEnd')}</b> {ends.join(', ') || endsWords(file, tell)}
          </span>
        </p>
        {card.findings.length > 0 && (
          <div className="card-findings">
            <b>
              {tell(findings.length === 1 ? 'yourRun.wrong-one' : 'yourRun.wrong-many', {
                count: findings.length,
              })}
            </b>
            {card.findings.map((finding, k) => (
              <span key={`${finding.rule} ${finding.at}`}>
                {k + 1}. {speak(finding.say)} ({findingPlace(finding, tell)})
              </span>
            ))}
          </div>
        )}
        <div className={card.wide ? 'card-figure wide' : 'card-figure'}>
          {/* biome-ignore lint/security/noDangerouslySetInnerHtml: src/drawing escapes every text */}
          <div className="drawn" dangerouslySetInnerHTML={{ __html: isometric.svg }} />
          <div className="card-lists">
            <div>
              <h3>{tell('yourRun.cut')}</h3>
              <table>
                <thead>
                  <tr>
                    <th>{tell('yourRun.piece')}</th>
                    <th className="num">{tell('yourRun.cutTo')}</th>
                    <th>{tell('yourRun.cutBy')}</th>
                  </tr>
                </thead>
                <tbody>
                  {card.cuts.map(({ pieces, cut }) => (
                    <tr key={cut}>
                      <th>{pieceNames(pieces, tell)}</th>
                      <td className="num">{shortLength(cut, 16)}</td>
                      <td>
                        <i className="initial" />
                      </td>
                    </tr>
                  ))}
                </tbody>
              </table>
            </div>
            {card.splices.length > 0 && (
              <div>
                <h3>{tell('yourRun.splice')}</h3>
                <table>
                  <thead>
                    <tr>
                      <th>{tell('yourRun.mark')}</th>
                      <th className="num">{tell('yourRun.centre')}</th>
                      <th className="num">{tell('yourRun.opening')}</th>
                      <th />
                    </tr>
                  </thead>
                  <tbody>
                    {card.splices.map(({ leg, name, at, kind, opening }) => (
                      <tr key={`${leg} ${name}`}>
                        <th>{tell('yourRun.spliceOf', { leg, name })}</th>
                        <td className="num">{shortLength(at, 16)}</td>
                        <td className="num">
                          {kind === 'hinged' ? tell('yourRun.joint-hinged') : shortLength(opening, 16)}
                        </td>
                        <td>
                          <i className="initial" />
                        </td>
                      </tr>
                    ))}
                  </tbody>
                </table>
              </div>
            )}
          </div>
        </div>
        {card.supports.length > 0 && (
          <table className="card-supports">
            <tbody>
              {card.supports.map(({ leg, way, supports }) => (
                <tr key={`${leg} ${supports[0]?.name}`}>
                  <th>
                    {tell('yourRun.leg', { leg })}, {tell(`yourRun.way-${way}`)}
                  </th>
                  <td>
                    {supports.map(({ name, at, hold }) => (
                      <span key={name}>
                        <b>{name}</b> {shortLength(at, 16)}
                        {hold === 'guide' ? '' : ` ${tell(`yourRun.hold-${hold as 'clamp'}`)}`}
                      </span>
                    ))}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        )}
        {card.jumpers.length > 0 && (
          <p className="card-jumpers">
            <b>{tell('yourRun.jumperList')}</b>
            {card.jumpers.map((jumper) => (
              <span key={`${jumper.leg} ${jumper.atIn}`}>
                {jumperPlace(jumper, resolved, file, tell)}:{' '}
                {jumper.size === null
                  ? tell('yourRun.sizeBlank')
                  : tell('yourRun.copper', { size: jumper.size })}
              </span>
            ))}
          </p>
        )}
        {left.length > 0 && (
          <p className="card-left">
            {tell('yourRun.leftToList', {
              what: left.map(([list, count]) => tell(`yourRun.left-${list as 'cuts'}`, { count })).join(', '),
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
        <table className="card-order">
          <tbody>
            {card.steps.map((step, k) => (
              <tr key={step}>
                <th>{k + 1}</th>
                <td>
                  {tell(step === 'hang' && span === '' ? 'yourRun.step-hangPlain' : `yourRun.step-${step}`, {
                    span,
                    fit,
                  })}
                </td>
                <td>
                  <i className="initial" />
                </td>
              </tr>
            ))}
            <tr className="card-hold">
              <th>{tell('yourRun.hold')}</th>
              <td>{tell(findings.length > 0 ? 'yourRun.holdWrong' : 'yourRun.holdWords')}</td>
              <td>
                <i className="initial" />
              </td>
            </tr>
          </tbody>
        </table>
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
        <table className="card-needs">
          <thead>
            <tr>
              <th>{tell('yourRun.crew')}</th>
              {card.needs.map((task) => (
                <th key={task}>{task}</th>
              ))}
            </tr>
          </thead>
          <tbody>
            {card.crew.map((person, k) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: an empty row has no other name
              <tr key={`${person} ${k}`}>
                <th>{person}</th>
                {card.needs.map((task) => (
                  <td key={task}>
                    <i className="initial" />
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
        <p className="card-signs">
          <span>{tell('yourRun.done')}</span>
          <span>{tell('yourRun.witness')}</span>
          <span>{tell('yourRun.taken')}</span>
        </p>
      </div>
      <dl className="card-block">
        {(
          [
            ['title', tell('yourRun.jobCardOf', { title })],
            ['number', file.number === '' ? '–' : tell('yourRun.cardNumber', { number: file.number })],
            ['revision', tell('yourRun.draft')],
            ['dated', today === '' ? '–' : dayText(tell, today)],
            ['works', file.place || '–'],
            ['status', tell('yourRun.cardStatus')],
          ] as const
        ).map(([key, value]) => (
          <div key={key}>
            <dt>{tell(`sheet.${key}`)}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </article>
  );
}

export const tagsOf = ({ tags }: RunFile) => ({
  ...(tags.start === '' ? {} : { start: tags.start }),
  ends: Object.fromEntries(Object.entries(tags.ends).filter(([, tag]) => tag !== '')),
});

/** Names of equal pieces, as many as a row holds. */
function pieceNames(pieces: readonly string[], tell: Tell): string {
  const most = 3;
  if (pieces.length <= most) return pieces.join(', ');
  return tell('yourRun.piecesOf', { first: pieces[0] ?? '', count: pieces.length - 1 });
}

function endsWords({ run }: RunFile, tell: Tell): string {
  const kinds = (run.ends ?? [])
    .filter(({ kind }) => kind !== 'free')
    .map(({ kind }) => tell(`yourRun.kind-${kind}`));
  return kinds.length === 0 ? tell('yourRun.kind-free') : kinds.join(', ');
}

import { Fragment, type ReactNode } from 'react';
import type { RunFile } from '../../../run/edit/file.ts';
import { supportLoads } from '../../../run/loads.ts';
import { fromInches, inches } from '../../../trade/length.ts';
import { measure, measureText } from '../../calculators/measure.ts';
import { longAs } from '../../run/lengths.ts';
import { hardwareWords, jumperPlace } from '../../run/said.ts';
import { counted, provenKey } from '../../run/words.ts';
import type { WorkedRun, World } from '../../run/workOut.ts';
import type { Settings } from '../../settings.ts';
import type { Speak, Tell } from '../../speak.ts';
import { Sources, Worked } from '../Worked.tsx';
import { StickBars } from './StickBars.tsx';

interface Props {
  readonly worked: WorkedRun;
  readonly file: RunFile;
  readonly world: World;
  readonly settings: Settings;
  readonly tell: Tell;
  readonly speak: Speak;
}

const tenth = (lb: number) => Math.round(lb * 10) / 10;
const hundredth = (in2: number) => Math.round(in2 * 100) / 100;

/** What a run comes to: a ruled row each, which opens to its working. */
export function Comes({ worked, file, world, settings, tell, speak }: Props) {
  const long = longAs(settings, tell);
  const { resolved, takeoff } = worked;
  if (resolved === null || takeoff === null) return null;
  const { result, steps, sources } = takeoff;
  const pieces = resolved.legs.flatMap((leg) => leg.pieces);
  const loads = supportLoads(resolved);
  const used = result.sticks.reduce((sum, { lengthsUsed }) => sum + (lengthsUsed ?? 0), 0);
  const only = (...groups: readonly string[]) =>
    steps.filter(({ say }) => groups.some((g) => say.startsWith(g)));
  return (
    <>
      <Row name={tell('yourRun.pieces')} count={String(pieces.length)} open>
        <table>
          <thead>
            <tr>
              <th scope="col">{tell('yourRun.piece')}</th>
              <th scope="col" className="num">
                {tell('yourRun.clear')}
              </th>
              <th scope="col" className="num">
                {tell('yourRun.goesIn')}
              </th>
              <th scope="col" className="num">
                {tell('yourRun.cutTo')}
              </th>
            </tr>
          </thead>
          <tbody>
            {pieces.map(({ id, clear, cut, ends }) => (
              <tr key={id}>
                <th scope="row">{id}</th>
                <td className="num">{long(clear)}</td>
                <td className="num">
                  {long(fromInches(inches(ends[0].insertion) + inches(ends[1].insertion)))}
                </td>
                <td className="num">{long(cut)}</td>
              </tr>
            ))}
          </tbody>
        </table>
        <p className="hint">{tell('yourRun.piecesNote')}</p>
        <Working steps={only('takeoff.piece')} tell={tell} speak={speak} />
      </Row>
      <Row name={tell('yourRun.sticks')} count={String(used)} open>
        <StickBars
          plans={result.sticks}
          several={result.sticks.length > 1}
          kerf={resolved.kerf}
          speak={speak}
        />
        <p className="hint">
          {tell('yourRun.sawTakes', { kerf: long(resolved.kerf) })}{' '}
          {result.sticks.map((plan) => (
            <Fragment key={plan.tray}>
              {tell(plan.proven ? provenKey(plan.lengthsUsed ?? 0) : 'yourRun.notProven', {
                fewer: (plan.lengthsUsed ?? 1) - 1,
              })}{' '}
              {plan.why?.map(speak).join(' ')}
            </Fragment>
          ))}
        </p>
        <Working steps={only('takeoff.sticks', 'sticks.')} tell={tell} speak={speak} />
      </Row>
      <Row name={tell('yourRun.supports')} count={String(loads.length)}>
        {loads.length === 0 ? (
          <p className="hint">{tell('yourRun.noSupports')}</p>
        ) : (
          <table>
            <thead>
              <tr>
                <th scope="col">{tell('yourRun.support')}</th>
                <th scope="col">{tell('yourRun.where')}</th>
                <th scope="col" className="num">
                  {tell('yourRun.carries')}
                </th>
              </tr>
            </thead>
            <tbody>
              {loads.map(({ leg, support, lb }) => (
                <tr key={support.name}>
                  <th scope="row">{support.name}</th>
                  <td>
                    {tell('yourRun.placed', { leg: leg.leg, at: long(support.at) })},{' '}
                    {tell(`yourRun.hold-${support.hold}`)}
                  </td>
                  <td className="num">
                    {lb === null ? '–' : measureText(measure('lb', tenth(lb)), settings, tell)}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        )}
        <Working
          steps={only(
            'takeoff.load',
            'takeoff.continuous',
            'takeoff.rods',
            'takeoff.noBearing',
            'takeoff.bearing',
            'takeoff.weight',
          )}
          tell={tell}
          speak={speak}
        />
      </Row>
      <Row name={tell('yourRun.jumpers')} count={String(result.jumpers.length)}>
        {result.jumpers.length > 0 && (
          <table>
            <tbody>
              {result.jumpers.map((jumper) => (
                <tr key={`${jumper.leg} ${jumper.atIn}`}>
                  <th scope="row">{jumperPlace(jumper, resolved, file, tell, long)}</th>
                  <td className="num">
                    {jumper.size === null
                      ? tell('yourRun.noSize')
                      : tell('yourRun.copper', { size: jumper.size })}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        )}
        <Working
          steps={only('takeoff.jumper', 'takeoff.noJumper', 'takeoff.size', 'takeoff.noSize', 'jumper.')}
          tell={tell}
          speak={speak}
        />
      </Row>
      <Row name={tell('yourRun.fill')} count={fullest(result.fill, settings, tell)}>
        <table>
          <tbody>
            {result.fill.map((row) => (
              <tr key={`${row.leg} ${row.side ?? ''}`}>
                <th scope="row">
                  {row.side === undefined
                    ? tell('yourRun.leg', { leg: row.leg })
                    : tell('yourRun.legSide', { leg: row.leg, side: tell(`yourRun.side-${row.side}`) })}
                </th>
                <td className="num">{fillText(row, settings, tell)}</td>
              </tr>
            ))}
          </tbody>
        </table>
        <Working steps={only('takeoff.fill', 'fill.')} tell={tell} speak={speak} />
      </Row>
      {result.gaps.length > 0 && (
        <Row name={tell('yourRun.gaps')} count={String(result.gaps.length)}>
          <table>
            <tbody>
              {result.gaps.map(({ leg, atIn, gapIn }) => (
                <tr key={`${leg} ${atIn}`}>
                  <th scope="row">{tell('yourRun.placed', { leg, at: long(fromInches(atIn)) })}</th>
                  <td className="num">{gapIn === null ? tell('yourRun.noGap') : long(fromInches(gapIn))}</td>
                </tr>
              ))}
            </tbody>
          </table>
          <Working
            steps={only('takeoff.gap', 'takeoff.noTemps', 'takeoff.outside')}
            tell={tell}
            speak={speak}
          />
        </Row>
      )}
      <Row
        name={tell('yourRun.hardware')}
        count={String(result.hardware.reduce((sum, { count }) => sum + count, 0))}
      >
        <table>
          <tbody>
            {result.hardware.map(({ item, count }) => (
              <tr key={item}>
                <th scope="row">{hardwareWords(item, world.catalogue, tell)}</th>
                <td className="num">{count}</td>
              </tr>
            ))}
          </tbody>
        </table>
        <Working steps={only('takeoff.hardware')} tell={tell} speak={speak} />
      </Row>
      <Row
        name={tell('yourRun.cables')}
        count={tell(`yourRun.cables-${counted(Object.keys(result.cableLengthsIn).length)}`, {
          count: Object.keys(result.cableLengthsIn).length,
        })}
      >
        <table>
          <tbody>
            {Object.entries(result.cableLengthsIn).map(([id, length]) => (
              <tr key={id}>
                <th scope="row">{id}</th>
                <td className="num">{long(fromInches(length))}</td>
              </tr>
            ))}
          </tbody>
        </table>
        <Working steps={only('takeoff.cable', 'takeoff.open', 'takeoff.slack')} tell={tell} speak={speak} />
      </Row>
      <details className="opens">
        <summary>{tell('yourRun.sources')}</summary>
        <div>
          <Sources sources={sources} tell={tell} />
        </div>
      </details>
      <LastWord steps={steps} speak={speak} />
    </>
  );
}

/** What the take-off says in the end: who has the last word. */
function LastWord({ steps, speak }: { steps: Steps; speak: Speak }) {
  const last = steps.find(({ say }) => say === 'takeoff.defer');
  return last === undefined ? null : <p className="note">{speak(last)}</p>;
}

interface FillRow {
  readonly areaIn2: number;
  readonly allowedIn2: number | null;
  readonly within: boolean | null;
}

function fillText({ areaIn2, allowedIn2 }: FillRow, settings: Settings, tell: Tell): string {
  const area = (in2: number) => measureText(measure('in2', hundredth(in2)), settings, tell);
  return allowedIn2 === null
    ? area(areaIn2)
    : tell('yourRun.fillOf', { area: area(areaIn2), allowed: area(allowedIn2) });
}

function fullest(rows: readonly FillRow[], settings: Settings, tell: Tell): string {
  const share = ({ areaIn2, allowedIn2 }: FillRow) => (allowedIn2 === null ? -1 : areaIn2 / allowedIn2);
  const [most] = [...rows].sort((a, b) => share(b) - share(a));
  return most === undefined || most.allowedIn2 === null ? '–' : fillText(most, settings, tell);
}

interface RowProps {
  readonly name: string;
  readonly count: string;
  readonly open?: boolean;
  readonly children: ReactNode;
}

function Row({ name, count, open, children }: RowProps) {
  return (
    <details className="opens" {...(open === true ? { open: true } : {})}>
      <summary>
        {name} <b>{count}</b>
      </summary>
      <div>{children}</div>
    </details>
  );
}

type Steps = Parameters<typeof Worked>[0]['steps'];
function Working({ steps, tell, speak }: { steps: Steps; tell: Tell; speak: Speak }) {
  if (steps.length === 0) return null;
  return (
    <details className="opens inner">
      <summary>{tell('yourRun.working')}</summary>
      <div>
        <Worked steps={steps} tell={tell} speak={speak} />
      </div>
    </details>
  );
}

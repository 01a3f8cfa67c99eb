import { numberedTriangle } from '../../../drawing/marks.ts';
import { pagePalette } from '../../../drawing/palette.ts';
import type { Drawing } from '../../../drawing/types.ts';
import { type NotJudged, type Numbered, notJudged, parted } from '../../run/judged.ts';
import { longAs } from '../../run/lengths.ts';
import { findingPlace, measureWords } from '../../run/said.ts';
import { counted } from '../../run/words.ts';
import type { WorkedRun } from '../../run/workOut.ts';
import type { Settings } from '../../settings.ts';
import { type Speak, type Tell, unbroken } from '../../speak.ts';

interface Props {
  readonly worked: WorkedRun;
  readonly drawings: readonly Drawing[];
  readonly settings: Settings;
  readonly tell: Tell;
  readonly speak: Speak;
}

/** What is wrong, always open: the number in its triangle, where it stands, what was measured, whose limit, what to do. */
export function Findings({ worked: { resolved, inspected }, ...how }: Props) {
  if (resolved === null || inspected === null) return null;
  const { wrong, unlaid } = parted(resolved.run, inspected.result.findings);
  const { tell, speak } = how;
  return (
    <>
      <List rows={wrong} {...how} />
      {unlaid.length > 0 && (
        <details className="opens">
          <summary>{tell(`yourRun.unlaid-${counted(unlaid.length)}`, { count: unlaid.length })}</summary>
          <div>
            <List rows={unlaid} {...how} />
          </div>
        </details>
      )}
      <Unjudged rows={notJudged(resolved, inspected)} tell={tell} speak={speak} />
    </>
  );
}

/** What no rule judged, open: each with its reason. */
function Unjudged({
  rows,
  tell,
  speak,
}: Pick<Props, 'tell' | 'speak'> & { readonly rows: readonly NotJudged[] }) {
  if (rows.length === 0) return null;
  return (
    <details className="opens" open>
      <summary>
        {tell('yourRun.notJudged')} <b>{rows.length}</b>
      </summary>
      <div>
        <ul>
          {rows.map(({ say }) => (
            <li key={speak(say)}>{unbroken(speak(say))}</li>
          ))}
        </ul>
      </div>
    </details>
  );
}

function List({
  rows,
  drawings,
  settings,
  tell,
  speak,
}: Omit<Props, 'worked'> & { readonly rows: readonly Numbered[] }) {
  if (rows.length === 0) return null;
  return (
    <ol className="findings">
      {rows.map(({ finding, number: n }) => {
        const number = String(n);
        const { rule, leg, at, measured, limit, unit, source, say, todo } = finding;
        return (
          <li key={`${rule} ${leg} ${at}`}>
            {/* biome-ignore lint/security/noDangerouslySetInnerHtml: a drawing of ours around a number */}
            <span dangerouslySetInnerHTML={{ __html: numberedTriangle(n, 'note', pagePalette) }} />
            <div>
              <h3>{unbroken(speak(say))}</h3>
              <p className="hint">
                {drawings.map(({ form, noted }) =>
                  noted?.[number] === undefined ? null : (
                    <span key={form} className={form === 'desk' ? 'at-desk' : 'at-phone'}>
                      {tell('yourRun.zone', { zone: noted[number] })}{' '}
                    </span>
                  ),
                )}
                <span>{findingPlace(finding, tell, longAs(settings, tell))}</span>
              </p>
              <p>{unbroken(speak(todo))}</p>
              <p className="hint">
                {measured === null && limit === null
                  ? ''
                  : tell(limit === null ? 'yourRun.measuredAlone' : 'yourRun.measured', {
                      measured: measureWords(measured, unit, settings, tell),
                      limit: measureWords(limit, unit, settings, tell),
                    })}{' '}
                {tell('yourRun.source', {
                  document: source.document,
                  edition: source.edition,
                  where: source.where,
                })}
              </p>
            </div>
          </li>
        );
      })}
    </ol>
  );
}

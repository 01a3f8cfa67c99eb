import { numberedTriangle } from '../../../drawing/marks.ts';
import { pagePalette } from '../../../drawing/palette.ts';
import type { Drawing } from '../../../drawing/types.ts';
import type { Finding } from '../../../run/inspect/finding.ts';
import { longAs } from '../../run/lengths.ts';
import { findingPlace, measureWords } from '../../run/said.ts';
import type { Settings } from '../../settings.ts';
import { type Speak, type Tell, unbroken } from '../../speak.ts';

interface Props {
  readonly findings: readonly Finding[];
  readonly drawings: readonly Drawing[];
  readonly settings: Settings;
  readonly tell: Tell;
  readonly speak: Speak;
}

/** What is wrong, always open: the number in its triangle, where it stands, what was measured, whose limit, what to do. */
export function Findings({ findings, drawings, settings, tell, speak }: Props) {
  return (
    <ol className="findings">
      {findings.map((finding, k) => {
        const number = String(k + 1);
        const { rule, leg, at, measured, limit, unit, source, say, todo } = finding;
        return (
          <li key={`${rule} ${leg} ${at}`}>
            {/* biome-ignore lint/security/noDangerouslySetInnerHtml: a drawing of ours around a number */}
            <span dangerouslySetInnerHTML={{ __html: numberedTriangle(k + 1, 'note', pagePalette) }} />
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

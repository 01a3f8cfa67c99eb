import { cloudedDimension, numberedTriangle } from '../../../drawing/marks.ts';
import { pagePalette } from '../../../drawing/palette.ts';
import type { Outcome } from '../../practice.ts';
import { type Tell, unbroken } from '../../speak.ts';

interface Props {
  readonly outcomes: readonly Outcome[];
  /** Asks that must hold. */
  readonly critical: readonly string[];
  readonly tell: Tell;
}

/** The longest text that a cloud takes; a longer one stands in words. */
const longestClouded = 14;

function Drawn({ svg }: { svg: string }) {
  // biome-ignore lint/security/noDangerouslySetInnerHtml: drawing/marks.ts escapes every text
  return <span dangerouslySetInnerHTML={{ __html: svg }} />;
}

/** A measure in its mark: ringed when it holds, clouded when it does not, dashed when there is none. */
export function Marked({ outcome: { finding, answer }, tell }: { outcome: Outcome; tell: Tell }) {
  if (finding.verdict === 'blank') return <span className="blank">{tell('practicePage.blankMark')}</span>;
  if (answer === '') return null;
  const holds = finding.verdict === 'holds' || finding.verdict === 'holds from there';
  if (holds) return <span className="ring dim">{answer}</span>;
  return answer.length > longestClouded ? (
    <b>{answer}</b>
  ) : (
    <Drawn svg={cloudedDimension(answer, pagePalette)} />
  );
}

/** What is to be reworked or looked at again, each with what was found. */
export function Rework({ outcomes, critical, tell }: Props) {
  const open = outcomes.filter(({ finding }) => finding.verdict !== 'holds');
  if (open.length === 0) return null;
  return (
    <>
      <h2 className="view-title">
        {tell(open.some(({ note }) => note !== null) ? 'practicePage.rework' : 'practicePage.again')}
      </h2>
      <ul className="findings">
        {open.map((outcome) => (
          <li key={outcome.ask.id}>
            {outcome.note === null ? (
              <span />
            ) : (
              <Drawn svg={numberedTriangle(outcome.note, 'note', pagePalette)} />
            )}
            <div>
              <h3>{unbroken(outcome.ask.prompt)}</h3>
              <div className="marked">
                <Marked outcome={outcome} tell={tell} />
              </div>
              <p>{unbroken(outcome.finding.says)}</p>
              {critical.includes(outcome.ask.id) && <p className="label">{tell('practicePage.decides')}</p>}
            </div>
          </li>
        ))}
      </ul>
    </>
  );
}

/** What holds, each measure in its ring. */
export function Holds({ outcomes, tell }: Omit<Props, 'critical'>) {
  const held = outcomes.filter(({ finding }) => finding.verdict === 'holds');
  if (held.length === 0) return null;
  return (
    <>
      <h2 className="view-title">{tell('practicePage.holds')}</h2>
      <ul className="holding">
        {held.map((outcome) => (
          <li key={outcome.ask.id}>
            <span>{unbroken(outcome.ask.prompt)}</span>
            <Marked outcome={outcome} tell={tell} />
          </li>
        ))}
      </ul>
    </>
  );
}

import { numberedTriangle } from '../../../drawing/marks.ts';
import { pagePalette } from '../../../drawing/palette.ts';
import type { Outcome } from '../../practice.ts';
import { type Tell, unbroken } from '../../speak.ts';
import { Drawn, Marked } from './Marked.tsx';

interface Props {
  readonly outcomes: readonly Outcome[];
  /** Asks that must hold. */
  readonly critical: readonly string[];
  readonly tell: Tell;
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

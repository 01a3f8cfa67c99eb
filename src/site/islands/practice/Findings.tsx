import { numberedTriangle } from '../../../drawing/marks.ts';
import { pagePalette } from '../../../drawing/palette.ts';
import { brokenRows } from '../../brokenRows.ts';
import { type Outcome, question } from '../../practice.ts';
import { type Speak, type Tell, unbroken } from '../../speak.ts';
import { Drawn, Marked } from './Marked.tsx';

interface Props {
  readonly outcomes: readonly Outcome[];
  /** Asks that must hold. */
  readonly critical: readonly string[];
  readonly tell: Tell;
  readonly speak: Speak;
}

/** What is to be reworked or looked at again, each with what was found. */
export function Rework({ outcomes, critical, tell, speak }: Props) {
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
              <h3>{question(outcome.ask)}</h3>
              <div className="marked">
                <Marked outcome={outcome} tell={tell} />
              </div>
              <Says text={outcome.finding.says} ask={outcome.ask} speak={speak} />
              {critical.includes(outcome.ask.id) && <p className="label">{tell('practicePage.decides')}</p>}
            </div>
          </li>
        ))}
      </ul>
    </>
  );
}

/** What was found, in a paragraph; a precedence that is broken has a row of its own. */
function Says({ text, ask, speak }: { text: string; ask: Outcome['ask']; speak: Speak }) {
  const { rows, rest } = brokenRows(text, ask.items ?? [], speak);
  return (
    <>
      {rest !== '' && <p>{unbroken(rest)}</p>}
      {rows.length > 0 && (
        <ul className="broken">
          {rows.map((row) => (
            <li key={row}>{unbroken(row)}</li>
          ))}
        </ul>
      )}
    </>
  );
}

/** What holds, each measure in its ring. */
export function Holds({ outcomes, tell }: Omit<Props, 'critical' | 'speak'>) {
  const held = outcomes.filter(({ finding }) => finding.verdict === 'holds');
  if (held.length === 0) return null;
  return (
    <>
      <h2 className="view-title">{tell('practicePage.holds')}</h2>
      <ul className="holding">
        {held.map((outcome) => (
          <li key={outcome.ask.id}>
            <span>{question(outcome.ask)}</span>
            <Marked outcome={outcome} tell={tell} />
          </li>
        ))}
      </ul>
    </>
  );
}

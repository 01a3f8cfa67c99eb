import { cloudedDimension } from '../../../drawing/cloud.ts';
import { pagePalette } from '../../../drawing/palette.ts';
import type { Outcome } from '../../practice.ts';
import { type Tell, unbroken } from '../../speak.ts';

/** The longest text that a cloud takes; a longer one stands in words. */
const longestClouded = 14;

/** A mark of ours as it is. */
export function Drawn({ svg }: { svg: string }) {
  // biome-ignore lint/security/noDangerouslySetInnerHtml: drawing/marks.ts escapes every text
  return <span dangerouslySetInnerHTML={{ __html: svg }} />;
}

/** A measure in its mark: ringed when it holds, clouded when it does not, dashed when there is none; of a step, its parts. */
export function Marked({ outcome: { finding, rows, parts }, tell }: { outcome: Outcome; tell: Tell }) {
  if (finding.verdict === 'blank') return <Mark rows={[]} holds={false} tell={tell} />;
  const holds = finding.verdict === 'holds' || finding.verdict === 'holds from there';
  if (parts.length > 0) {
    return (
      <ul className="marked-parts">
        {parts.map((part) => (
          <li key={part.id}>
            <span>{part.prompt}</span>
            <Mark rows={part.rows} holds={part.holds} tell={tell} />
          </li>
        ))}
      </ul>
    );
  }
  return rows.length === 0 ? null : <Mark rows={rows} holds={holds} tell={tell} />;
}

interface MarkProps {
  readonly rows: readonly string[];
  readonly holds: boolean;
  readonly tell: Tell;
}

function Mark({ rows, holds, tell }: MarkProps) {
  if (rows.length === 0) return <span className="blank">{tell('practicePage.blankMark')}</span>;
  if (holds) return <Rings rows={rows} />;
  const answer = rows.join('; ');
  return answer.length > longestClouded ? (
    <b>{answer}</b>
  ) : (
    <Drawn svg={cloudedDimension(answer, pagePalette)} />
  );
}

/** A ring; of things set down, faults named, lengths cut from: a ring each. */
function Rings({ rows }: Pick<MarkProps, 'rows'>) {
  const [only = '', ...others] = rows;
  if (others.length === 0) return <span className="ring dim">{unbroken(only)}</span>;
  return (
    <ul className="rings">
      {rows.map((row) => (
        <li key={row}>
          <span className="ring dim">{unbroken(row)}</span>
        </li>
      ))}
    </ul>
  );
}

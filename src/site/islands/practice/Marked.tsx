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
export function Marked({ outcome: { finding, answer, parts }, tell }: { outcome: Outcome; tell: Tell }) {
  if (finding.verdict === 'blank') return <Mark answer="" holds={false} tell={tell} />;
  const holds = finding.verdict === 'holds' || finding.verdict === 'holds from there';
  if (parts.length > 0) {
    return (
      <ul className="marked-parts">
        {parts.map((part) => (
          <li key={part.id}>
            <span>{part.prompt}</span>
            <Mark answer={part.answer} holds={part.holds} tell={tell} />
          </li>
        ))}
      </ul>
    );
  }
  return answer === '' ? null : <Mark answer={answer} holds={holds} tell={tell} />;
}

function Mark({ answer, holds, tell }: { answer: string; holds: boolean; tell: Tell }) {
  if (answer === '') return <span className="blank">{tell('practicePage.blankMark')}</span>;
  if (holds) return <Rings answer={answer} />;
  return answer.length > longestClouded ? (
    <b>{answer}</b>
  ) : (
    <Drawn svg={cloudedDimension(answer, pagePalette)} />
  );
}

/** A ring; of things set down, faults named, lengths cut from: a ring each. */
function Rings({ answer }: { answer: string }) {
  const rows = answer.split('; ');
  if (rows.length === 1) return <span className="ring dim">{unbroken(answer)}</span>;
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

import { cloudedDimension } from '../../../drawing/cloud.ts';
import { pagePalette } from '../../../drawing/palette.ts';
import type { Outcome } from '../../practice.ts';
import type { Tell } from '../../speak.ts';

/** The longest text that a cloud takes; a longer one stands in words. */
const longestClouded = 14;

/** A mark of ours as it is. */
export function Drawn({ svg }: { svg: string }) {
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

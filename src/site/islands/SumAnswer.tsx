import type { Answered, Say } from '../../trade/answer.ts';
import { type Measure, measureText } from '../calculators/measure.ts';
import type { Line, ResultRow, Said } from '../calculators/sum.ts';
import type { Settings } from '../settings.ts';
import type { Speak, Tell } from '../speak.ts';

interface AnswerProps {
  readonly said: Said;
  readonly answered: Answered<object>;
  readonly example: boolean;
  readonly text: (line: Line) => string;
  readonly speak: Speak;
  readonly tell: Tell;
}

/** What the core says why it hands the question on, and whether a value that no works has adopted had a part in it. */
export function Answer({ said, answered, example, text, speak, tell }: AnswerProps) {
  const asExample = (words: string) => (example ? tell('sums.example', { text: words }) : words);
  const { why = [] } = answered.result as { readonly why?: readonly Say[] };
  const training =
    answered.sources.some(({ seen }) => seen === 'training value') ||
    answered.steps.some(({ say }) => say === 'rests.training');
  return (
    <>
      {said.asked !== undefined && <p className="label">{asExample(text(said.asked))}</p>}
      <p className="huge">{asExample(text(said.huge))}</p>
      {said.more?.map((line) => (
        <p key={line.key}>{text(line)}</p>
      ))}
      {why.map((say) => (
        <p key={say.say}>{speak(say)}</p>
      ))}
      {training && <p className="label">{tell('sums.training')}</p>}
    </>
  );
}

interface RowsProps {
  readonly rows: readonly ResultRow[];
  readonly settings: Settings;
  readonly text: (line: Line) => string;
  readonly tell: Tell;
}

export function ResultRows({ rows, settings, text, tell }: RowsProps) {
  if (rows.length === 0) return null;
  const shown = (value: Line | Measure | string) =>
    typeof value === 'string' ? value : 'key' in value ? text(value) : measureText(value, settings, tell);
  return (
    <table className="plain comes-to">
      <caption>{tell('sums.comesTo')}</caption>
      <tbody>
        {rows.map(({ label, value }, k) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the rows have no identity but their order
          <tr key={k}>
            <th scope="row">{text(label)}</th>
            <td className="num">{shown(value)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

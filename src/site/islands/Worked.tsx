import type { Source, Step } from '../../trade/answer.ts';
import { figure } from '../../trade/figure.ts';
import { type Speak, type Tell, unbroken } from '../speak.ts';

/** Units whose sign is not as the core names them. */
const units = {
  in2: 'unit.in2',
  in: 'unit.in',
  mm: 'unit.mm',
  in3: 'unit.in3',
  in4: 'unit.in4',
  'lb-in2': 'unit.lbIn2',
  deg: 'unit.deg',
  rad: 'unit.rad',
} as const;

/** What a step ends in, as written: a text as it stands, a number with its unit. */
function endOf({ value, unit }: Step, tell: Tell): string {
  if (value === undefined) return '';
  if (typeof value === 'string') return value;
  const named = unit !== undefined && unit in units ? tell(units[unit as keyof typeof units]) : (unit ?? '');
  return `${figure(value)} ${named}`.trim();
}

/** The working, a numbered line each, the number it ends in at the right. */
export function Worked({ steps, speak, tell }: { steps: readonly Step[]; speak: Speak; tell: Tell }) {
  return (
    <ol className="worked">
      {steps.map((step, k) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the lines have no identity but their order
        <li key={k}>
          <span>{unbroken(speak(step))}</span>
          <span className="dim">{endOf(step, tell)}</span>
        </li>
      ))}
    </ol>
  );
}

/** Where the figures come from, and how surely we know it. */
export function Sources({ sources, tell }: { sources: readonly Source[]; tell: Tell }) {
  const seen = {
    page: 'seen.page',
    memory: 'seen.memory',
    'common practice': 'seen.practice',
    'training value': 'seen.training',
  } as const;
  return (
    <ul className="sources">
      {sources.map((source) => (
        <li key={`${source.id} ${source.where}`}>
          <strong>{source.document}</strong>, {source.edition}: {source.where}. {tell(seen[source.seen])}
        </li>
      ))}
    </ul>
  );
}

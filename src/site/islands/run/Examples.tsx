import type { RunFile } from '../../../run/edit/file.ts';

export interface Example {
  readonly id: string;
  readonly number: string;
  readonly name: string;
  /** Of what stands at its start and ends. */
  readonly tags: RunFile['tags'];
  readonly json: unknown;
}

interface Props {
  readonly examples: readonly Example[];
  readonly onExample: (example: Example) => void;
}

/** The runs of the demo works, a row each: one opens as a run of this device. */
export function Examples({ examples, onExample }: Props) {
  return (
    <ul className="kept-runs">
      {examples.map((example) => (
        <li key={example.id}>
          <button type="button" className="as-link offer" onClick={() => onExample(example)}>
            {example.number} · {example.name}
          </button>
        </li>
      ))}
    </ul>
  );
}

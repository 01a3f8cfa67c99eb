import type { CrewView } from '../../crew.ts';
import type { Tell } from '../../speak.ts';

interface Props {
  readonly job: NonNullable<CrewView['job']>;
  readonly tell: Tell;
}

/** Who can take the job, who lacks one task only, and which way of each task is judged. */
export function Job({ job, tell }: Props) {
  return (
    <section className="ready" aria-label={tell('crew.ask')}>
      <div>
        <p className="label">{job.label}</p>
        <p className="huge">{job.ready}</p>
      </div>
      <div>
        {job.lacks.map((text) => (
          <p key={text}>{text}</p>
        ))}
        {job.ways !== '' && <p className="note">{job.ways}</p>}
        <p className="note">{tell('crew.lacksNote')}</p>
      </div>
    </section>
  );
}

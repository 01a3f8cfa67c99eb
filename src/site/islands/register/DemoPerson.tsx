import type { Asked, PersonView } from '../../personView.ts';
import type { Tell } from '../../speak.ts';
import { JobAsked } from './MayAnswer.tsx';
import { PersonSheet } from './PersonSheet.tsx';

interface Props {
  readonly view: PersonView;
  /** What the demo's job asks about this person. */
  readonly asked: Asked | undefined;
  readonly tell: Tell;
}

/** The sheet of one of the demo's people, with what the demo's job asks; built without script. */
export function DemoPerson({ view, asked, tell }: Props) {
  return (
    <PersonSheet
      view={view}
      tell={tell}
      asked={asked === undefined ? null : <JobAsked asked={asked} tell={tell} />}
    />
  );
}

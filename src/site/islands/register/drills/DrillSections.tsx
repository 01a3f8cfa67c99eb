import { type ReactNode, useMemo, useState } from 'react';
import type { TaskMap } from '../../../../register/taskMap.ts';
import type { Opened } from '../../../device/register.ts';
import type { Means } from '../../../drills/act.ts';
import { acts, ownershipLine } from '../../../drills/acts.ts';
import { waitingToSettle } from '../../../drills/branches.ts';
import type { Looking } from '../../../drills/looking.ts';
import type { SiteKey, Speak, Tell } from '../../../speak.ts';
import { useLater } from '../../useLater.ts';
import { loadGrader } from '../loadGrader.ts';
import type { Device } from '../useDevice.ts';
import { ActForm } from './ActForm.tsx';
import { Forks } from './Forks.tsx';
import { PersonHeld } from './PersonHeld.tsx';
import { Retention } from './Retention.tsx';

export interface DrillsProps {
  readonly device: Device & { readonly opened: Opened };
  readonly map: TaskMap;
  readonly lang: string;
  /** Address of the page with the texts of the drills. */
  readonly drillsPage: string;
  readonly refresh: () => Promise<void>;
  readonly speak: Speak;
  readonly tell: Tell;
}

/** What is done when something is lost or wrong: one part for each, with the acts that belong to it. */
export function DrillSections(props: DrillsProps) {
  const { device, map, lang, drillsPage, refresh, speak, tell } = props;
  const { opened, key, people } = device;
  const grader = useLater(loadGrader);
  const means = useMemo((): Means => ({ regrade: grader?.regradeIn(lang) }), [grader, lang]);
  const looking: Looking = useMemo(
    () => ({
      judged: opened.judged,
      map,
      names: people.names,
      me: key?.publicKey,
      now: opened.at,
      speak,
      tell,
    }),
    [opened, map, people, key, speak, tell],
  );
  const form = (name: keyof typeof acts) =>
    acts[name].grades === true && means.regrade === undefined ? (
      <p role="status">{tell('drills.reading')}</p>
    ) : (
      <ActForm act={acts[name]} device={device} looking={looking} means={means} refresh={refresh} />
    );
  const waiting = waitingToSettle(looking);
  const part = (title: SiteKey, line: SiteKey, drill: string, what: () => ReactNode, count = 0) => (
    <Part title={tell(title)} drill={drill} count={count}>
      {() => (
        <>
          <p>{tell(line)}</p>
          <p>
            <a className="offer" href={`${drillsPage}#${drill}`}>
              {tell('drills.how')}
            </a>
          </p>
          {what()}
        </>
      )}
    </Part>
  );
  return (
    <>
      {part('drills.lost', 'drills.lostLine', 'lost-phone', () => form('retire'))}
      {part('drills.owner', 'drills.ownerLine', 'lost-owner-key', () => (
        <>
          <p className="wrap-id">{ownershipLine(looking)}</p>
          {form('succeed')}
          {form('takeOver')}
        </>
      ))}
      {part(
        'drills.forks',
        'drills.forksLine',
        'restored-backup',
        () => (
          <>
            <Forks looking={looking} />
            {form('settle')}
          </>
        ),
        waiting,
      )}
      {part('drills.wrong', 'drills.wrongLine', 'withdrawn-check', () => (
        <>
          {form('withdraw')}
          {form('correct')}
        </>
      ))}
      {part('drills.leaves', 'drills.leavesLine', 'person-leaves', () => (
        <>
          <PersonHeld looking={looking} />
          <Retention looking={looking} ids={people.ids} />
          {form('erase')}
        </>
      ))}
      {part('drills.records', 'drills.recordsLine', 'tickets', () => (
        <>
          {form('ticket')}
          {form('assigned')}
        </>
      ))}
    </>
  );
}

interface PartProps {
  readonly title: string;
  readonly drill: string;
  /** What waits in it; nothing is shown for 0. */
  readonly count: number;
  readonly children: () => ReactNode;
}

/** A part that is worked out when it is first opened, and stands from then on: what is written in it is not lost. */
function Part({ title, drill, count, children }: PartProps) {
  const [used, setUsed] = useState(false);
  return (
    <details
      className="opens"
      id={`drill-${drill}`}
      onToggle={(event) => event.currentTarget.open && setUsed(true)}
    >
      <summary>
        {title}
        {count > 0 && <b>{count}</b>}
      </summary>
      <div>{used && children()}</div>
    </details>
  );
}

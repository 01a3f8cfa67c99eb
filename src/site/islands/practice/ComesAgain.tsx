import { useEffect, useState } from 'react';
import { turnsOf } from '../../../practice/comingBack.ts';
import { dayText } from '../../dates.ts';
import { attemptsOf } from '../../device/attempts.ts';
import { dayHere, now } from '../../device/edge.ts';
import type { Tell } from '../../speak.ts';
import { useLater } from '../useLater.ts';

interface Props {
  readonly family: string;
  /** Nothing is said before the draw that stands there was tried. */
  readonly tried: boolean;
  /** Tries kept so far: read anew whenever one more is. */
  readonly kept: number;
  /** Address of the page that says what to take next. */
  readonly list: string;
  readonly tell: Tell;
}

/** Fetched once the page stands, so that a network which is cut later stops nothing. */
const loadRest = async () => (await import('../../rest.ts')).restUntil;

/** After a try: when this family comes again on this device, and the way to what comes next. */
export function ComesAgain({ family, tried, kept, list, tell }: Props) {
  const restUntil = useLater(loadRest);
  const [day, setDay] = useState<string | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: `kept` stands for the tries on this device
  useEffect(() => {
    if (restUntil === null) return;
    const look = async () => {
      const given = {
        families: [{ id: family, tasks: [] }],
        tasks: [],
        now: now(),
        dayOf: dayHere,
        restUntil,
      };
      const { today, later } = turnsOf({ ...given, attempts: await attemptsOf(family) });
      setDay(today.length > 0 ? 'today' : (later[0]?.day ?? null));
    };
    // A device that keeps nothing says so elsewhere.
    look().catch(() => setDay(null));
  }, [restUntil, family, kept]);
  if (!tried) return null;
  return (
    <p className="comes-again off-paper" role="status">
      {day !== null && (
        <>
          {day === 'today'
            ? tell('practiceList.againToday')
            : tell('practiceList.againOn', { day: dayText(tell, day) })}{' '}
          {tell('practiceList.firstCounts')}{' '}
        </>
      )}
      <a href={list}>{tell('practiceList.whatNext')}</a>
    </p>
  );
}

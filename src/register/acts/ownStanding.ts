import type { Fault } from '../../trade/given.ts';
import type { Variant } from '../bodies.ts';
import { checksOf, type Regrade } from '../checks.ts';
import { type Day, isDay } from '../days.ts';
import type { Judged } from '../judged.ts';
import { type On, type Standing, type Stands, standingOf, type Why } from '../standing.ts';
import { fullVariant, isHeading, monthsOf, type TaskMap, taskOf, variantText } from '../taskMap.ts';
import { fault, type Writing } from '../write.ts';

/** What a site asks of a witness beyond his appointment. The register's own rules ask none of it. */
export interface Demands {
  /** By task, the day from which a witness of it must himself be shown in what he signs for; others need not be. */
  readonly ownStanding: Readonly<Record<string, Day>>;
}

/** What a witness looks at: a check, or one that is looked at a second time. */
export interface Looked {
  readonly task: string;
  /** The day seen. */
  readonly on: Day;
  /** A pair left out has its plain value. */
  readonly variant?: Variant | undefined;
}

/** What governs a standing, in a few words. */
const whys: Readonly<Record<string, string>> = {
  W: 'taken back',
  N: 'a not-yet since',
  T: 'its time had passed',
  '?': 'in doubt',
};

/** A bare number is a revision's; beside "not shown", where no revision speaks, 2 is the second witness. */
const whyText = ({ code, entry }: Why, standing: Standing): string => {
  const number = standing === 'not shown' ? 'no second witness yet' : `revision ${code} asks for it again`;
  const what = whys[code] ?? number;
  return entry === null ? what : `${what}, entry ${entry.slice(0, 16)}`;
};

/**
 * What keeps a witness whose own standing does not hold on the day seen from signing, where the site demands that it
 * does: the fault names the standing, why, and the entry that says so.
 * @param demands  nothing is demanded when it is left out
 */
export function ownStandingFaults(
  judged: Judged,
  looked: Looked,
  map: TaskMap,
  { signer }: Writing,
  regrade: Regrade | undefined,
  demands: Demands | undefined,
): readonly Fault[] {
  const from = demands?.ownStanding[looked.task];
  if (from === undefined || !isDay(looked.on) || looked.on < from) return [];
  // A key that is nobody's is appointed for nothing, and refused for that.
  const [witness] = judged.authority.persons.get(signer.publicKey) ?? [];
  if (witness === undefined) return [];
  const stands = standingOfOne(judged, witness, looked, map, regrade);
  if (stands === undefined || stands.standing === 'shown') return [];
  const [why] = stands.why;
  const said = why === undefined ? '' : `: ${whyText(why, stands.standing)}`;
  const message = `the witness’s own standing in ${looked.task} on ${looked.on} is ${stands.standing}${said}`;
  const todo = `this site asks a witness of ${looked.task} to be shown in it himself: show it again first, or have another witness look`;
  return [fault('key', signer.publicKey, message, todo)];
}

/** How one person stands in one way of doing a task; `undefined` where the map has no such task to show. */
function standingOfOne(
  judged: Judged,
  person: string,
  { task: id, on, variant = {} }: Looked,
  map: TaskMap,
  regrade: Regrade | undefined,
): Stands | undefined {
  const task = taskOf(map, id);
  if (task === undefined || isHeading(task)) return undefined;
  const wanted = variantText(fullVariant(task, variant));
  const missing = judged.bodyless.get(person);
  const unsure: Why | undefined =
    missing === undefined ? undefined : { code: '?', say: { say: 'registerWhy.body' }, entry: missing.id };
  const at: On = { judged, task, on, months: monthsOf(task), unsure };
  const checks = checksOf(judged, map, regrade).get(person) ?? [];
  return standingOf(
    checks.filter((c) => c.body.task === id && c.variantKey === wanted && c.body.on <= on),
    at,
  );
}

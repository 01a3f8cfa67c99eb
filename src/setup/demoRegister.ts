/**
 * Makes content/demo/register once: signed entries of invented people at an invented works. Keys are made here, used,
 * and thrown away; salts are of chance, so a second making gives other bytes. What it made is kept in git.
 *
 *     node src/setup/demoRegister.ts      (refuses while there is a register)
 */

import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { contentFiles } from '../cli/contentFiles.ts';
import { isRegister } from '../cli/register/folder.ts';
import { beginFolder, writeFolder } from '../cli/register/folderWrite.ts';
import { keyOf as rightOf } from '../practice/key.ts';
import { sheetDraws } from '../practice/sheet.ts';
import { appoint } from '../register/acts/appoint.ts';
import { assigned } from '../register/acts/assigned.ts';
import { begin } from '../register/acts/begin.ts';
import { type CheckGiven, check } from '../register/acts/check.ts';
import { correct } from '../register/acts/correct.ts';
import { erase } from '../register/acts/erase.ts';
import { retire } from '../register/acts/retire.ts';
import { second } from '../register/acts/second.ts';
import { succeed } from '../register/acts/succeed.ts';
import { ticket } from '../register/acts/ticket.ts';
import { withdraw } from '../register/acts/withdraw.ts';
import type { Measured, Point } from '../register/bodies.ts';
import type { Json } from '../register/canonical.ts';
import { addMonths, type Day } from '../register/days.ts';
import type { RegisterFiles } from '../register/held.ts';
import type { Judged } from '../register/judged.ts';
import { type Chance, makeKey, unwrapKey } from '../register/keyFile.ts';
import type { Signer } from '../register/keys.ts';
import { openRegister } from '../register/register.ts';
import { verifierOf } from '../register/webcrypto.ts';
import { type Writing, type Written, withWritten } from '../register/write.ts';
import { dayIn } from '../schema/dayIn.ts';
import { readLibrary } from '../schema/library.ts';
import { practiceOf } from '../schema/practice.ts';
import { regradeWith } from '../schema/regrade.ts';
import { taskMapOf } from '../schema/task.ts';
import { speaker } from '../schema/words.ts';
import {
  type Answered,
  acts,
  crew,
  type DemoAct,
  demo,
  grid,
  gridWitness,
  owner,
  people,
  type Special,
  special,
  tasks,
  witnesses,
} from './demoCrew.ts';

const root = fileURLToPath(new URL('../../content/demo/', import.meta.url));
const folder = `${root}register`;
const chance: Chance = (bytes) => crypto.getRandomValues(new Uint8Array(bytes));
const verify = verifierOf(crypto.subtle);

if (isRegister(folder)) {
  console.error('content/demo/register is there; take it away first if you mean to make another');
  process.exit(2);
}
const { library } = readLibrary(contentFiles().filter((f) => !f.path.startsWith('content/demo/')));
const map = taskMapOf(library);
const worksPractice = practiceOf(library);
const language = { lang: 'en', speak: speaker(library.words.get('en') ?? new Map()) };
const regrade = regradeWith(() => ({ practice: worksPractice, language }));

const keyOf = (device: string): Promise<Signer> => unwrapKey(makeKey(device, chance), undefined, undefined);
const ownerKey = await keyOf(owner.device);
const keys = new Map<string, Signer>([
  [owner.id, ownerKey],
  ...(await Promise.all(witnesses.map(async (w) => [w.id, await keyOf(w.devices[0])] as const))),
]);
const keyBy = (person: string): Signer => {
  const key = keys.get(person);
  if (key === undefined) throw new Error(`${person} has no key`);
  return key;
};

let files: RegisterFiles = {};
let written = 0;
async function put(
  now: number,
  act: (writing: Writing) => Promise<Written>,
  signer: Signer,
  device?: string,
): Promise<string> {
  const entry = await act({ signer, now, chance, device });
  if (written === 0) beginFolder(folder, entry);
  else if (!writeFolder(folder, entry, files)) throw new Error('somebody else writes into this folder');
  files = withWritten(files, entry);
  written += 1;
  return entry.entry;
}
const judgedAt = async (now: number) => (await openRegister(files, { verify, now, dayIn })).judged;

const start = Date.parse(`${demo.began}T15:00:00Z`);
await put(start, (w) => begin({ zone: demo.zone, person: owner.id }, w, dayIn), ownerKey);
for (const [i, { id, tasks: named }] of witnesses.entries()) {
  const now = start + (i + 1) * 600_000;
  const judged = await judgedAt(now);
  const witness = keyBy(id).publicKey;
  await put(
    now,
    (w) => appoint(judged, { witness, person: id, tasks: named, on: demo.began }, map, w),
    ownerKey,
  );
}

/** A day in the months before the demo's own on which a showing is still good; spread, never the same for all. */
function dayFor(task: string, turn: number): Day {
  const months = map.tasks.find((t) => t.id === task)?.months ?? 12;
  const asked = task === 'T07' ? demo.afterRevision : addMonths(demo.on, 1 - months);
  const from = Math.max(Date.parse(asked), Date.parse(addMonths(demo.began, 1)));
  const room = (Date.parse(demo.on) - from) / 86_400_000 - 3;
  const day = new Date(from + Math.floor(((turn * 37) % 101) * (room / 101)) * 86_400_000);
  // Nobody works on a Sunday at Alder Creek.
  if (day.getUTCDay() === 0) day.setUTCDate(day.getUTCDate() + 1);
  return day.toISOString().slice(0, 10);
}

const parts = (task: string): readonly string[] => {
  const found = map.tasks.find((t) => t.id === task)?.parts ?? [];
  return found.length > 0 ? found : [task];
};

const plan: Special[] = [...special];
let turn = 0;
for (const [row, task] of tasks.entries()) {
  for (const [column, person] of crew.entries()) {
    const mark = grid[row]?.split(' ')[column];
    const witness = gridWitness[mark ?? ''] ?? witnesses[0].id;
    for (const id of mark === '.' || mark === '*' ? [] : parts(task)) {
      turn += 1;
      const base = { person, task: id, outcome: 'shown' as const, on: dayFor(id, turn), witness };
      if (mark === 'p') plan.push({ ...base, ...practice(turn) });
      else plan.push({ ...base, points: pointsOf(id, turn), measured: measuredOf(id, turn) });
    }
  }
}

function practice(n: number): Partial<CheckGiven> {
  const ways: readonly Partial<CheckGiven>[] = [
    { manner: 'simulated' },
    { help: 'with-help' },
    { manner: 'talked' },
    { inSight: false },
  ];
  return ways[n % ways.length] ?? {};
}

function pointsOf(task: string, n: number): readonly Point[] {
  const critical = library.tasks.get(task)?.critical ?? [];
  return critical.map((point, i) => ({ point, how: (n + i) % 5 === 0 ? 'asked' : 'seen' }));
}

/** Pieces as they were measured: never over, at most 1/8 in short. */
function measuredOf(task: string, n: number): readonly Measured[] {
  const pieces: Readonly<Record<string, readonly (readonly [string, string])[]>> = {
    T05: [
      [`7'-8 5/8"`, `7'-8 5/8"`],
      [`5'-3 1/2"`, `5'-3 1/2"`],
      [`2'-11 3/4"`, `2'-11 3/4"`],
    ],
    T06: [
      [`7'-8 5/8"`, `7'-8 9/16"`],
      [`7'-0 3/16"`, `7'-0 1/8"`],
      [`11'-5 1/2"`, `11'-5 7/16"`],
    ],
  };
  return (pieces[task] ?? []).map(([wanted, got], i) => ({
    what: `piece ${i + 1}`,
    wanted,
    got,
    tool: `tape ${10 + (n % 6)}`,
  }));
}

/** The sheet that T05 is set with, answered; where it is not all right, one critical ask of the first draw is 2 in out. */
function answersOf(person: string, { bench, device, right }: Answered): Json {
  const sheet = worksPractice.sheets.get('measure-and-mark');
  if (sheet === undefined) throw new Error('no sheet of T05');
  const answers = sheetDraws(sheet, bench, worksPractice).map(({ family, seed, draw }, i) => {
    const key = rightOf(draw, worksPractice.world, language).answers;
    const wrong = !right && i === 0;
    const given = Object.entries(key).map(([ask, value]): [string, Json] => [
      ask,
      typeof value === 'number' && wrong ? value - 2 : (value as Json),
    ]);
    return { family, seed, answers: Object.fromEntries(given) };
  });
  return { v: 1, kind: 'answers', sheet: sheet.id, bench, person, device, task: 'T05', answers };
}

/** Entries by who and what they are about, the last one signed. */
const signed = new Map<string, string>();
const named = (person: string, what: string): string => `${person} ${what}`;
const found = ([person, what]: readonly [string, string]): string => {
  const entry = signed.get(named(person, what));
  if (entry === undefined) throw new Error(`nothing is signed about ${person} and ${what} yet`);
  return entry;
};

interface Step {
  readonly day: Day;
  readonly by: string;
  readonly device?: string | undefined;
  readonly about?: string;
  readonly act: (judged: Judged, writing: Writing) => Promise<Written>;
}

/** A device that grades nothing: what does not hold is found by whoever reads the register. */
const takenAsGiven = () => true;

const checkStep = ({ witness, device, entered, answered, ...given }: Special): Step => ({
  ...{ day: entered ?? given.on, by: witness, device, about: named(given.person, given.task) },
  act: (judged, writing) => {
    const evidence = answered === undefined ? null : answersOf(given.person, answered);
    return check(judged, { ...given, evidence }, map, writing, takenAsGiven);
  },
});

/** The last entry of each device of a key. */
function lastOf({ view }: Judged, key: string): readonly string[] {
  const own = view.list.filter(({ header }) => header.signer === key);
  return [...new Map(own.map(({ header, id }) => [header.device, id])).values()];
}

function actStep(one: DemoAct): Step {
  const step = { day: one.on, by: one.by };
  if (one.kind === 'ticket') {
    const about = named(one.given.person, one.given.ticket);
    return { ...step, about, act: (judged, writing) => ticket(judged, one.given, writing) };
  }
  const act: Step['act'] = (judged, writing) => {
    if (one.kind === 'assigned') return assigned(judged, one.given, writing);
    if (one.kind === 'second') return second(judged, { entry: found(one.of) }, map, writing);
    if (one.kind === 'withdraw') return withdraw(judged, { entry: found(one.of), why: one.why }, writing);
    if (one.kind === 'correct') {
      const evidence = answersOf(one.of[0], one.answered);
      return correct(judged, { entry: found(one.of), evidence, why: one.why }, writing, regrade);
    }
    if (one.kind === 'succeed') return succeed(judged, { next: nextKey.publicKey }, writing);
    if (one.kind === 'erase') return erase(judged, { person: one.person, why: one.why }, writing);
    const { publicKey } = keyBy(one.witness);
    const after = lastOf(judged, publicKey);
    return retire(judged, { witness: publicKey, after, why: one.why }, writing);
  };
  return { ...step, act };
}

const nextKey = await keyOf('office-safe');
const steps = [...plan.map(checkStep), ...acts.map(actStep)];
steps.sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0));
let minute = 0;
let before = '';
for (const { day, by, device, about, act } of steps) {
  minute = day === before ? minute + 7 : 0;
  before = day;
  const now = Date.parse(`${day}T21:00:00Z`) + minute * 60_000;
  const judged = await judgedAt(now);
  const entry = await put(now, (w) => act(judged, w), keyBy(by), device);
  if (about !== undefined) signed.set(about, entry);
}

const text = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`;
writeFileSync(`${root}people.json`, text({ people }));
writeFileSync(
  `${root}demo.json`,
  text({ works: demo.works, zone: demo.zone, on: demo.on, at: demo.at, owner: ownerKey.publicKey, crew }),
);
console.log(`content/demo/register: ${written} entries; its keys are gone`);

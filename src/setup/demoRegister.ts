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
import { appoint } from '../register/acts/appoint.ts';
import { begin } from '../register/acts/begin.ts';
import { type CheckGiven, check } from '../register/acts/check.ts';
import type { Measured, Point } from '../register/bodies.ts';
import { addMonths, type Day } from '../register/days.ts';
import type { RegisterFiles } from '../register/held.ts';
import { type Chance, makeKey, unwrapKey } from '../register/keyFile.ts';
import type { Signer } from '../register/keys.ts';
import { openRegister } from '../register/register.ts';
import { verifierOf } from '../register/webcrypto.ts';
import { type Writing, type Written, withWritten } from '../register/write.ts';
import { dayIn } from '../schema/dayIn.ts';
import { readLibrary } from '../schema/library.ts';
import { taskMapOf } from '../schema/task.ts';
import { crew, demo, grid, gridWitness, owner, people, special, tasks, witnesses } from './demoCrew.ts';

const root = fileURLToPath(new URL('../../content/demo/', import.meta.url));
const folder = `${root}register`;
const chance: Chance = (bytes) => crypto.getRandomValues(new Uint8Array(bytes));
const verify = verifierOf(crypto.subtle);

if (isRegister(folder)) {
  console.error('content/demo/register is there; take it away first if you mean to make another');
  process.exit(2);
}
const { library } = readLibrary(contentFiles().filter((f) => f.path.startsWith('content/tasks/')));
const map = taskMapOf(library);

const keyOf = (device: string): Promise<Signer> => unwrapKey(makeKey(device, chance), undefined, undefined);
const ownerKey = await keyOf(owner.device);
const keys = new Map<string, Signer>(
  await Promise.all(witnesses.map(async (w) => [w.id, await keyOf(w.device)] as const)),
);

let files: RegisterFiles = {};
let written = 0;
async function put(now: number, act: (writing: Writing) => Promise<Written>, signer: Signer): Promise<void> {
  const entry = await act({ signer, now, chance });
  if (written === 0) beginFolder(folder, entry);
  else if (!writeFolder(folder, entry, files)) throw new Error('somebody else writes into this folder');
  files = withWritten(files, entry);
  written += 1;
}
const judgedAt = async (now: number) => (await openRegister(files, { verify, now, dayIn })).judged;

const start = Date.parse(`${demo.began}T15:00:00Z`);
await put(start, (w) => begin({ zone: demo.zone, person: owner.id }, w, dayIn), ownerKey);
for (const [i, { id }] of witnesses.entries()) {
  const now = start + (i + 1) * 600_000;
  const judged = await judgedAt(now);
  const witness = (keys.get(id) as Signer).publicKey;
  await put(
    now,
    (w) => appoint(judged, { witness, person: id, tasks: 'all', on: demo.began }, map, w),
    ownerKey,
  );
}

interface Planned extends CheckGiven {
  readonly witness: string;
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

const plan: Planned[] = [...special];
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

plan.sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0));
let minute = 0;
let before = '';
for (const { witness, ...given } of plan) {
  minute = given.on === before ? minute + 7 : 0;
  before = given.on;
  const now = Date.parse(`${given.on}T21:00:00Z`) + minute * 60_000;
  const judged = await judgedAt(now);
  await put(now, (w) => check(judged, given, map, w), keys.get(witness) as Signer);
}

const text = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`;
writeFileSync(`${root}people.json`, text({ people }));
writeFileSync(
  `${root}demo.json`,
  text({ works: demo.works, zone: demo.zone, on: demo.on, at: demo.at, owner: ownerKey.publicKey, crew }),
);
console.log(`content/demo/register: ${written} entries; its keys are gone`);

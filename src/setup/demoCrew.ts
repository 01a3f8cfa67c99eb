/** The invented works, its people, and who showed what: from this `demoRegister.ts` makes the signed entries. */
import type { CheckGiven } from '../register/acts/check.ts';

export const demo = {
  works: 'Alder Creek',
  zone: 'America/Denver',
  /** The demo's own day: its board does not age. */
  on: '2026-03-09',
  at: '2026-03-09T23:00:00Z',
  began: '2024-01-15',
  /** T07 was issued anew then, and is asked for again. */
  afterRevision: '2026-01-13',
};

export const owner = { id: 'p-10', device: 'office-desk' };
export const witnesses = [
  { id: 'p-07', device: 'kd-phone' },
  { id: 'p-08', device: 'lz-tablet' },
] as const;

export const crew = [
  'p-01',
  'p-02',
  'p-03',
  'p-04',
  'p-05',
  'p-06',
  'p-09',
  'p-11',
  'p-12',
  'p-13',
  'p-14',
  'p-15',
];

/** Nobody of this name is known to us: invented. */
export const people = [
  { id: 'p-01', name: 'Abel Wrenfield' },
  { id: 'p-02', name: 'Bettina Norrgate' },
  { id: 'p-03', name: 'Davit Marlsand' },
  { id: 'p-04', name: 'Esme Inglebrook' },
  { id: 'p-05', name: 'Hanne Vallmoor' },
  { id: 'p-06', name: 'Joss Tannerby' },
  { id: 'p-07', name: 'Kirra Dunmarsh' },
  { id: 'p-08', name: 'Lew Zellmark' },
  { id: 'p-09', name: 'Mila Crakewell' },
  { id: 'p-10', name: 'Odette Ravenhurst' },
  { id: 'p-11', name: 'Pell Oskarby' },
  { id: 'p-12', name: 'Runa Kestrowe' },
  { id: 'p-13', name: 'Silas Larkmere' },
  { id: 'p-14', name: 'Teo Grantholm' },
  { id: 'p-15', name: 'Yara Fennick' },
];

export const tasks = [
  ...['T01', 'T02', 'T03', 'T04', 'T05', 'T06', 'T07', 'T08'],
  ...['T09', 'T10', 'T11', 'T12', 'T13', 'T14', 'T15'],
];

/** A row a task, a column a person: K, L shown to KD or LZ (`gridWitness`); p practice only; . nothing; * in `special`. */
export const grid = [
  'K K K K K L K K L K p K',
  'L L p K K L K L K L . p',
  'K K p L L K K L K K . *',
  'p p . p K K . * L L . .',
  'K L K K K L K K K K p L',
  'K K p K K K L K L L * p',
  'p L p * L L p K K K . .',
  '. K * p K K . * L L . .',
  '. . . . K L . . K L . .',
  '. p . . L L . p K K . .',
  '. L p p K p . K L L . .',
  'p L . p L p p L K K . .',
  'K K * p L K L K K L p K',
  '. p . . K p . p L * . .',
  '. . . . L p . . K L . .',
];

const [kd, lz] = [witnesses[0].id, witnesses[1].id];
/** Who signed where the grid has a letter. */
export const gridWitness: Readonly<Record<string, string>> = { K: kd, L: lz };

type Special = CheckGiven & { readonly witness: string };
const shown = (person: string, task: string, on: string, witness: string = kd): Special => ({
  person,
  task,
  outcome: 'shown',
  on,
  witness,
});

/** What the grid cannot say: time passed, a new revision, not yet since, other variants, a stopped attempt. */
export const special: readonly Special[] = [
  // T: twelve months of T04, twenty-four of T14, are over.
  shown('p-11', 'T04', '2025-02-19'),
  shown('p-13', 'T14', '2024-02-27', lz),
  // 2: seen before revision 2 of T07.
  shown('p-04', 'T07', '2025-12-04', lz),
  // N: not yet since.
  shown('p-03', 'T13', '2025-11-18'),
  { ...shown('p-03', 'T13', '2026-02-20', lz), outcome: 'not-yet' },
  // Parts of T08: five shown and one practised; two practised and four never seen.
  ...['T08a', 'T08b', 'T08c', 'T08d', 'T08e'].map((t) => shown('p-11', t, '2025-10-07', lz)),
  { ...shown('p-11', 'T08f', '2025-10-08', lz), manner: 'simulated' },
  { ...shown('p-03', 'T08a', '2026-01-22'), help: 'with-help' },
  { ...shown('p-03', 'T08b', '2026-01-22'), manner: 'simulated' },
  // Not yet, and nothing shown; and an attempt that was stopped for safety.
  { ...shown('p-15', 'T03', '2026-02-11'), outcome: 'not-yet' },
  { ...shown('p-14', 'T06', '2026-02-17', lz), outcome: 'not-yet', stopped: true },
  // Other ways of doing it.
  { ...shown('p-05', 'T07', '2026-02-03', lz), variant: { width: '6', place: 'lift' } },
  { ...shown('p-12', 'T03', '2025-09-16'), variant: { place: 'lift' } },
  { ...shown('p-13', 'T06', '2025-08-12', lz), variant: { metal: 'stainless' } },
  { ...shown('p-06', 'T07', '2026-02-24', lz), variant: { joint: 'butt' } },
  { ...shown('p-09', 'T07', '2026-03-03', lz), variant: { position: 'vertical' }, help: 'with-help' },
];

/** The invented works, its people, and who showed what: from this `demoRegister.ts` makes the signed entries. */
import type { CheckGiven } from '../register/check.ts';

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

export const owner = { id: 'OR', device: 'office-desk' };
export const witnesses = [
  { id: 'KD', device: 'kd-phone' },
  { id: 'LZ', device: 'lz-tablet' },
] as const;

export const crew = ['AW', 'BN', 'DM', 'EI', 'HV', 'JT', 'MC', 'PO', 'RK', 'SL', 'TG', 'YF'];

/** Nobody of this name is known to us: invented. */
export const people = [
  { id: 'AW', name: 'Abel Wrenfield' },
  { id: 'BN', name: 'Bettina Norrgate' },
  { id: 'DM', name: 'Davit Marlsand' },
  { id: 'EI', name: 'Esme Inglebrook' },
  { id: 'HV', name: 'Hanne Vallmoor' },
  { id: 'JT', name: 'Joss Tannerby' },
  { id: 'KD', name: 'Kirra Dunmarsh' },
  { id: 'LZ', name: 'Lew Zellmark' },
  { id: 'MC', name: 'Mila Crakewell' },
  { id: 'OR', name: 'Odette Ravenhurst' },
  { id: 'PO', name: 'Pell Oskarby' },
  { id: 'RK', name: 'Runa Kestrowe' },
  { id: 'SL', name: 'Silas Larkmere' },
  { id: 'TG', name: 'Teo Grantholm' },
  { id: 'YF', name: 'Yara Fennick' },
];

export const tasks = [
  ...['T01', 'T02', 'T03', 'T04', 'T05', 'T06', 'T07', 'T08'],
  ...['T09', 'T10', 'T11', 'T12', 'T13', 'T14', 'T15'],
];

/** A row a task, a column a person: K, L shown to KD or LZ; p practice only; . nothing; * in `special`. */
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

type Special = CheckGiven & { readonly witness: 'KD' | 'LZ' };
const shown = (person: string, task: string, on: string, witness: 'KD' | 'LZ' = 'KD'): Special => ({
  person,
  task,
  outcome: 'shown',
  on,
  witness,
});

/** What the grid cannot say: time passed, a new revision, not yet since, other variants, a stopped attempt. */
export const special: readonly Special[] = [
  // T: twelve months of T04, twenty-four of T14, are over.
  shown('PO', 'T04', '2025-02-19'),
  shown('SL', 'T14', '2024-02-27', 'LZ'),
  // 2: seen before revision 2 of T07.
  shown('EI', 'T07', '2025-12-04', 'LZ'),
  // N: not yet since.
  shown('DM', 'T13', '2025-11-18'),
  { ...shown('DM', 'T13', '2026-02-20', 'LZ'), outcome: 'not-yet' },
  // Parts of T08: five shown and one practised; two practised and four never seen.
  ...['T08a', 'T08b', 'T08c', 'T08d', 'T08e'].map((t) => shown('PO', t, '2025-10-07', 'LZ')),
  { ...shown('PO', 'T08f', '2025-10-08', 'LZ'), manner: 'simulated' },
  { ...shown('DM', 'T08a', '2026-01-22'), help: 'with-help' },
  { ...shown('DM', 'T08b', '2026-01-22'), manner: 'simulated' },
  // Not yet, and nothing shown; and an attempt that was stopped for safety.
  { ...shown('YF', 'T03', '2026-02-11'), outcome: 'not-yet' },
  { ...shown('TG', 'T06', '2026-02-17', 'LZ'), outcome: 'not-yet', stopped: true },
  // Other ways of doing it.
  { ...shown('HV', 'T07', '2026-02-03', 'LZ'), variant: { width: '6', place: 'lift' } },
  { ...shown('RK', 'T03', '2025-09-16'), variant: { place: 'lift' } },
  { ...shown('SL', 'T06', '2025-08-12', 'LZ'), variant: { metal: 'stainless' } },
  { ...shown('JT', 'T07', '2026-02-24', 'LZ'), variant: { joint: 'butt' } },
  { ...shown('MC', 'T07', '2026-03-03', 'LZ'), variant: { position: 'vertical' }, help: 'with-help' },
];

/** The invented works, its people, and who showed what: from this `demoRegister.ts` makes the signed entries. */
import type { AssignedGiven } from '../register/acts/assigned.ts';
import type { CheckGiven } from '../register/acts/check.ts';
import type { TicketGiven } from '../register/acts/ticket.ts';
import type { Day } from '../register/days.ts';

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
/** The first device of each is the one that his key was made on. */
export const witnesses = [
  { id: 'p-07', devices: ['kd-phone'], tasks: 'all' },
  { id: 'p-08', devices: ['lz-tablet'], tasks: 'all' },
  // Left the works: his key is retired, what he had signed on both devices stands.
  { id: 'p-16', devices: ['wt-phone', 'wt-tablet'], tasks: ['T01', 'T12'] },
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
  { id: 'p-16', name: 'Wick Tarnhollow' },
];

export const tasks = [
  ...['T01', 'T02', 'T03', 'T04', 'T05', 'T06', 'T07', 'T08'],
  ...['T09', 'T10', 'T11', 'T12', 'T13', 'T14', 'T15'],
];

/** A row a task, a column a person: K, L shown to KD or LZ (`gridWitness`); p practice only; . nothing; * in `special`. */
export const grid = [
  'K K K K K * K K L K p K',
  'L L p K K L K L K L . p',
  'K K p L L K K L K K . *',
  'p p . p K K . * L L . .',
  'K L * * K * * K K K p *',
  'K K p K K K L K L L * p',
  'p L p * L L p K K K . .',
  '. K * p K K . * L L . .',
  '. . . . K L . . K L . .',
  '. p . . L L . p K K . .',
  '. L p p K p . K L L . .',
  'p * . p L p p L K K . .',
  'K K * p L K L K K L p K',
  '. p . . K p . p L * . .',
  '. . . . L p . . * L . .',
];

const [kd, lz, wt] = [witnesses[0].id, witnesses[1].id, witnesses[2].id];
/** Who signed where the grid has a letter. */
export const gridWitness: Readonly<Record<string, string>> = { K: kd, L: lz };

/** Answers of the sheet that T05 is set with, at a bench: as a person who gets all of them right, or one of them wrong. */
export interface Answered {
  readonly bench: number;
  /** Device they were given on. */
  readonly device: string;
  readonly right: boolean;
}
export interface Special extends CheckGiven {
  readonly witness: string;
  /** In place of the witness's first. */
  readonly device?: string;
  /** Day it was entered, where that is later than the day seen. */
  readonly entered?: Day;
  readonly answered?: Answered;
}
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
  // W: taken back, see `acts`.
  shown('p-15', 'T05', '2025-06-10', lz),
  // ?: signed before answers were graded again, and one of them does not hold.
  { ...shown('p-04', 'T05', '2025-10-14'), answered: { bench: 31, device: 'ei-phone', right: false } },
  // The same, and put right since: see `acts`.
  { ...shown('p-09', 'T05', '2025-10-16'), answered: { bench: 12, device: 'mc-phone', right: false } },
  // Answered on the witness's own device.
  { ...shown('p-06', 'T05', '2025-11-06', lz), answered: { bench: 44, device: 'lz-tablet', right: true } },
  // Seen on one day, entered from paper on another.
  { ...shown('p-03', 'T05', '2025-12-15'), entered: '2025-12-22' },
  // By a witness who has left since, on each of his two devices.
  { ...shown('p-06', 'T01', '2024-11-12', wt), device: 'wt-phone' },
  { ...shown('p-02', 'T12', '2024-12-03', wt), device: 'wt-tablet' },
  // Wants a second witness, and has none yet.
  shown('p-12', 'T15', '2026-02-25'),
  // Somebody who left: erased, see `acts`.
  shown('p-17', 'T01', '2024-05-14'),
  shown('p-17', 'T05', '2024-05-21', lz),
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

/** What was signed besides checks. `of` names the check, or the ticket, of a person that it acts on. */
export type DemoAct = { readonly on: Day; readonly by: string } & (
  | { readonly kind: 'ticket'; readonly given: TicketGiven }
  | { readonly kind: 'assigned'; readonly given: AssignedGiven }
  | { readonly kind: 'second'; readonly of: readonly [person: string, task: string] }
  | { readonly kind: 'withdraw'; readonly of: readonly [string, string]; readonly why: string }
  | {
      readonly kind: 'correct';
      readonly of: readonly [string, string];
      readonly why: string;
      readonly answered: Answered;
    }
  | { readonly kind: 'retire'; readonly witness: string; readonly why: string }
  | { readonly kind: 'succeed' }
  | { readonly kind: 'erase'; readonly person: string; readonly why: string }
);

const issuer = 'Alder Creek safety office';
const ticket = (
  on: Day,
  person: string,
  id: string,
  number: string,
  until: Day,
  by: string = kd,
): DemoAct => ({
  ...{ on, by, kind: 'ticket' },
  given: { person, ticket: id, issuer, number, until },
});

export const acts: readonly DemoAct[] = [
  // Kept elsewhere, should the owner's key be lost.
  { on: '2024-02-01', by: owner.id, kind: 'succeed' },
  {
    ...{ on: '2025-03-03', by: owner.id, kind: 'retire', witness: wt },
    why: 'left the works; both devices are handed in',
  },
  { on: '2025-06-24', by: lz, kind: 'withdraw', of: ['p-15', 'T05'], why: 'written down for another person' },
  {
    ...{ on: '2025-10-27', by: kd, kind: 'correct', of: ['p-09', 'T05'] },
    why: 'the answers of another try were sent with it',
    answered: { bench: 12, device: 'mc-phone', right: true },
  },
  ticket('2024-05-14', 'p-17', 'W1', 'AC-0288', '2025-05-13'),
  { on: '2025-08-11', by: owner.id, kind: 'erase', person: 'p-17', why: 'left, and asked for it' },
  { on: '2025-11-24', by: kd, kind: 'second', of: ['p-05', 'T15'] },
  { on: '2026-03-04', by: kd, kind: 'second', of: ['p-13', 'T15'] },
  ticket('2025-03-17', 'p-06', 'W1', 'AC-0371', '2026-02-27', lz),
  ticket('2025-09-08', 'p-05', 'W4', 'AC-0417', '2026-09-30'),
  ticket('2025-12-01', 'p-05', 'W1', 'AC-0452', '2026-11-30', lz),
  ticket('2025-12-01', 'p-02', 'W1', 'AC-0453', '2026-11-30', lz),
  // Of one kind twice: the later counts; and one that was taken back.
  ticket('2025-01-20', 'p-11', 'W1', 'AC-0349', '2026-01-19'),
  ticket('2026-01-19', 'p-11', 'W1', 'AC-0471', '2027-01-18'),
  ticket('2026-01-12', 'p-12', 'W6', 'AC-0468', '2027-01-11'),
  { on: '2026-01-14', by: kd, kind: 'withdraw', of: ['p-12', 'W6'], why: 'the number was read wrong' },
  ticket('2026-01-14', 'p-12', 'W6', 'AC-0486', '2027-01-11'),
  {
    ...{ on: '2026-03-02', by: owner.id, kind: 'assigned' },
    given: {
      ...{ job: 'ALD-013', person: 'p-05' },
      ...{ from: '2026-03-03T07:00:00-07:00', to: '2026-03-03T15:30:00-07:00' },
    },
  },
  {
    ...{ on: '2026-03-02', by: owner.id, kind: 'assigned' },
    given: {
      ...{ job: 'ALD-013', person: 'p-06', override: 'second pair of hands beside the lead hand, all day' },
      ...{ from: '2026-03-03T07:00:00-07:00', to: '2026-03-03T15:30:00-07:00' },
    },
  },
];

/** A small register with an entry of every kind, an unknown one included, kept as it was after each. */
import type { RegisterFiles } from '../../src/register/held.ts';
import { Book, kd, lz, next, owner, signerOf } from './book.ts';

export interface Moment {
  readonly files: RegisterFiles;
  readonly entry: string;
  /** Day it was entered. */
  readonly day: string;
}
export interface EveryKind {
  readonly book: Book;
  /** Oldest first; the first has the owner's appointments. */
  readonly moments: readonly Moment[];
}

const third = signerOf(6, 'third');
const tablet = { ...kd, device: 'KD-tablet' };

export async function everyKind({ erased }: { erased: boolean }): Promise<EveryKind> {
  const b = await Book.staffed();
  const moments: Moment[] = [{ files: b.files, entry: b.begin, day: '2026-01-01' }];
  let day = 1;
  const then = async (act: (on: string) => Promise<string>): Promise<string> => {
    const on = `2026-02-${String(day).padStart(2, '0')}`;
    day += 1;
    b.on(on);
    const entry = await act(on);
    moments.push({ files: b.files, entry, day: on });
    return entry;
  };
  await then(() => b.appoint(third, 'TH', ['T2', 'T3']));
  await then(() => b.succeed(next));
  const dm = await then((on) => b.check(kd, 'DM', 'T1', on));
  const ei = await then((on) => b.check(kd, 'EI', 'T3', on, { evidence: { good: false } }));
  await then(() => b.second(lz, 'EI', ei));
  const again = await then(() => b.second(third, 'EI', ei));
  await then(() => b.act(third, 'withdraw', 'EI', [again]));
  await then(() => b.act(kd, 'correct', 'EI', [ei], { evidence: { good: true } }));
  await then((on) => b.check(lz, 'DM', 'T1', on, { outcome: 'not-yet' }));
  await then((on) => b.check(tablet, 'HV', 'T2', on, { help: 'with-help', variant: { width: '6' } }));
  await then((on) => b.check(lz, 'HV', 'T2', on));
  await then((on) => b.check(kd, 'HV', 'T2', on, { outcome: 'not-yet' }));
  const mistaken = await then((on) => b.check(lz, 'DM', 'T2', on));
  await then(() => b.act(lz, 'withdraw', 'DM', [mistaken]));
  const ticket = { ticket: 'W4', issuer: 'site', number: '7', until: '2026-12-31' };
  await then(() => b.add(owner, { kind: 'ticket', about: 'HV', body: ticket }));
  const shift = { job: 'j', from: '2026-02-14T06:00:00Z', to: '2026-02-14T14:00:00Z', override: null };
  await then(() => b.add(kd, { kind: 'assigned', about: 'HV', body: shift }));
  await then(() => b.act(owner, 'withdraw', 'DM', [dm]));
  const last = await then((on) => b.check(third, 'JT', 'T2', on));
  await then((on) => b.check(third, 'EI', 'T2', on));
  await then(() => b.retire(third, 'TH', [last]));
  await then(() => b.add(lz, { kind: 'seen', body: null }));
  await then(() => b.add(kd, { kind: 'later-kind', about: 'HV', body: null }));
  // a thing that was never there, said to be lost for good
  await then(() => b.act(owner, 'settle', 'DM', ['ab'.repeat(32)]));
  await then((on) => b.check(kd, 'DM', 'T4', on));
  await then(() => b.add(next, { kind: 'take-over', body: { why: 'lost' } }));
  if (erased) await then(() => b.add(next, { kind: 'erase', about: 'JT', body: { why: 'left' } }));
  return { book: b, moments };
}

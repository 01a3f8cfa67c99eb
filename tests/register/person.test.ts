/** Everything held about one person. */
import { describe, expect, test } from 'vitest';
import { hashOf } from '../../src/register/bytes.ts';
import { canonical } from '../../src/register/canonical.ts';
import { idOf, lineOf, signedBytes } from '../../src/register/header.ts';
import { personFile } from '../../src/register/person.ts';
import { at, Book, kd, lz, owner, stranger, verify } from './book.ts';

const now = at('2026-06-01');
async function full(): Promise<{ b: Book; ids: string[] }> {
  const b = await Book.staffed();
  const check = await b.on('2026-02-02').check(kd, 'DM', 'T3', '2026-02-02', { evidence: { a: 1 } });
  await b.check(kd, 'EI', 'T2', '2026-02-02');
  const second = await b.on('2026-02-03').second(lz, 'DM', check);
  const correct = await b.act(kd, 'correct', 'DM', [check], { evidence: { a: 2 } });
  const ticket = await b.add(owner, {
    kind: 'ticket',
    about: 'DM',
    body: { ticket: 'W4', issuer: 'site', number: '7', until: '2026-12-31' },
  });
  const withdraw = await b.act(owner, 'withdraw', 'DM', [ticket]);
  const assigned = await b.add(kd, {
    kind: 'assigned',
    about: 'DM',
    body: { job: 'j', from: '2026-02-04T06:00:00Z', to: '2026-02-04T14:00:00Z', override: null },
  });
  // it counts for nothing, and is held about him all the same
  const refused = await b.check(stranger, 'DM', 'T2', '2026-02-03');
  return { b, ids: [check, second, correct, ticket, withdraw, assigned, refused] };
}

describe('everything held about one person', () => {
  test('every kind of entry about him, counted or not, and nothing about anybody else', async () => {
    const { b, ids } = await full();
    const file = personFile(await b.judged({ now }), 'DM');
    expect(file.id).toBe('DM');
    expect(file.entries.map((e) => e.id)).toEqual(ids);
    expect(file.entries.every((e) => e.header.about === 'DM')).toBe(true);
    expect(file.bodies.map((body) => body.hash)).toEqual(file.entries.map((e) => e.header.body).sort());
  });
  test('entries and bodies are whole: they verify as they stand, and lie where it says', async () => {
    const { b } = await full();
    const { entries, bodies } = personFile(await b.judged({ now }), 'DM');
    for (const { id, header, signature, file, line } of entries) {
      expect(idOf(header)).toBe(id);
      expect(await verify(header.signer, signedBytes(header), signature)).toBe(true);
      expect((b.files[file] ?? '').split('\n')[line - 1]).toBe(lineOf(header, signature));
    }
    for (const held of bodies) {
      if (!('body' in held)) throw new Error('a body in canonical form is read');
      expect(hashOf(canonical(held.body))).toBe(held.hash);
    }
  });
  test('of a witness: his appointment and retirement, not what he signed about others', async () => {
    const { b } = await full();
    await b.on('2026-03-01').retire(kd, 'KD', []);
    const { entries, bodies } = personFile(await b.judged({ now }), 'KD');
    expect(entries.map((e) => e.header.kind)).toEqual(['appoint', 'retire']);
    expect(bodies).toHaveLength(2);
  });
  test('an id nobody has', async () => {
    const { b } = await full();
    expect(personFile(await b.judged({ now }), 'dm')).toEqual({ id: 'dm', entries: [], bodies: [] });
  });
  test('erased: the headers, and of the bodies only the reason of the erase', async () => {
    const { b, ids } = await full();
    const erase = await b.on('2026-03-01').act(owner, 'erase', 'DM', []);
    // the bodies still lie in this folder: they are not read any more
    const { entries, bodies } = personFile(await b.judged({ now }), 'DM');
    expect(entries.map((e) => e.id)).toEqual([...ids, erase]);
    expect(bodies.map((body) => body.hash)).toEqual([b.header(erase).body]);
  });
  test('a body that is gone is left out; one that is not in canonical form stands as it lies', async () => {
    const b = await Book.staffed();
    const gone = await b.on('2026-02-02').check(kd, 'DM', 'T2', '2026-02-02');
    b.remove(`bodies/${b.header(gone).body}.json`);
    const text = JSON.stringify({ z: 1, a: 'loose' });
    for (const loose of [text, 'no JSON']) {
      b.files = { ...b.files, [`bodies/${hashOf(loose)}.json`]: loose };
    }
    const header = { about: 'EI', prev: gone, seq: 1, seen: [] };
    const odd = await b.raw(kd, { ...header, body: hashOf(text) }, null);
    await b.raw(kd, { ...header, prev: odd, seq: 2, body: hashOf('no JSON') }, null);
    const judged = await b.judged({ now });
    expect(personFile(judged, 'DM').bodies).toEqual([]);
    const bodies = personFile(judged, 'EI').bodies.map((held) => ('text' in held ? held.text : held.body));
    expect([...bodies].sort()).toEqual(['no JSON', text]);
  });
});

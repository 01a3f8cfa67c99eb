import { expect, test } from 'vitest';
import { readYaml, splitFrontMatter } from '../../src/schema/yaml.ts';

test('what is read', () => {
  const { data, faults } = readYaml('id: T05\nsteps:\n  - title: Mark\n    do: [a, b]\n', 2);
  expect(faults).toEqual([]);
  expect(data).toEqual({ id: 'T05', steps: [{ title: 'Mark', do: ['a', 'b'] }] });
});

test('yes and no stay texts, as in YAML 1.2', () => {
  expect(readYaml('a: yes\nb: no\nc: 1e3\nd: 08\n').data).toEqual({ a: 'yes', b: 'no', c: 1000, d: 8 });
});

test.each([
  ['a field twice', 'a: 1\nb: 2\na: 3\n', 'line 3: this field stands twice'],
  ['a text cut by a comma', 'says: { en: Look, then cut. }\n', 'line 1: a comma parts the text here'],
  ['a second document', 'a: 1\n---\nb: 2\n', 'line 2: a second document begins here'],
])('%s', (_, text, message) => {
  expect(readYaml(text).faults.map((f) => f.message)).toContain(message);
  expect(readYaml(text).data).toBeUndefined();
});

test('a fault in front matter is counted from the head of the file', () => {
  expect(readYaml('a: 1\na: 2\n', 2).faults[0]?.message).toBe('line 3: this field stands twice');
});

test('null that is written out stands', () => {
  expect(readYaml('a: { b: null, c: ~ }\nd:\n').data).toEqual({ a: { b: null, c: null }, d: null });
});

test('front matter and the text after it', () => {
  expect(splitFrontMatter('---\nid: T05\n---\n\nText --- here.\n')).toEqual({
    matter: 'id: T05\n',
    body: '\nText --- here.\n',
    bodyLine: 4,
  });
  expect(splitFrontMatter('---\r\nid: T05\r\n---\r\n')?.matter).toBe('id: T05\r\n');
});

test.each(['id: T05\n', '---\nid: T05\n', ''])('no front matter in %j', (text) => {
  expect(splitFrontMatter(text)).toBeUndefined();
});

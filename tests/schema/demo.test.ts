/** The demo's files have shapes like all content, and name only what is there. */
import { expect, test } from 'vitest';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { readLibrary } from '../../src/schema/library.ts';

const files = contentFiles().filter(({ path }) => /^content\/(?:tasks|tickets|demo|words)\//.test(path));
const faultsWith = (name: string, change: (text: string) => string) => {
  const path = `content/demo/${name}`;
  const changed = files.map((file) => {
    if (file.path !== path) return file;
    const text = change(file.text);
    if (text === file.text) throw new Error(`nothing changed in ${path}`);
    return { path, text };
  });
  const { library, faults } = readLibrary(changed);
  const found = faults.filter((fault) => fault.file.startsWith('content/demo/'));
  return { demo: library.demo, faults: found.map(({ file, field }) => `${file.slice(13)} ${field}`) };
};

test('it is read with the library', () => {
  const { demo } = readLibrary(files).library;
  expect([demo?.works, demo?.on, demo?.crew.length, demo?.people.ids.length]).toEqual([
    'Alder Creek',
    '2026-03-09',
    12,
    16,
  ]);
  expect(demo?.jobs[0].needs.map(({ task }) => task)).toEqual(['T03', 'T06', 'T07', 'T11']);
});

test.each([
  ['demo.json', (t: string) => t.replace('"on"', '"day"'), ['demo.json on', 'demo.json day']],
  ['demo.json', (t: string) => t.replace('"p-05"', '"p-55"'), ['demo.json crew[4]']],
  ['jobs.json', (t: string) => t.replace('"T11"', '"T16"'), ['jobs.json jobs[0].needs[3].task']],
  ['jobs.json', (t: string) => t.replace('"hands": 3', '"hands": 0'), ['jobs.json jobs[0].hands']],
  ['jobs.json', (t: string) => t.replace('"p-15"', '"p-55"'), ['jobs.json people[11].id']],
  [
    'jobs.json',
    (t: string) => t.replace('"task": "T07",', '"task": "T07", "variant": {"width": "12"},'),
    ['jobs.json jobs[0].needs[2].variant.width'],
  ],
  ['people.json', (t: string) => t.replace('"name"', '"nom"'), ['people.json people[0].nom']],
  ['people.json', (t: string) => t.slice(0, 40), ['people.json file']],
] as const)('%s: what is wrong is found, with its field', (name, change, want) => {
  const { demo, faults } = faultsWith(name, change);
  expect(demo).toBeUndefined();
  expect(faults.sort()).toEqual([...want].sort());
});

test('a file that is missing, and one too many', () => {
  const without = files.filter(({ path }) => path !== 'content/demo/jobs.json');
  const more = [...without, { path: 'content/demo/more.json', text: '{}' }];
  const found = readLibrary(more).faults.filter(({ file }) => file.startsWith('content/demo/'));
  expect(found.map(({ file, message }) => `${file} ${message}`)).toEqual([
    'content/demo/jobs.json this file is missing',
    'content/demo/more.json no collection takes this file',
  ]);
});

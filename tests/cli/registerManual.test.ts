import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { group } from '../../src/cli/register.ts';
import { called } from './registerDisk.ts';

const manual = readFileSync(new URL('../../src/cli/README.md', import.meta.url), 'utf8');
const section = manual.slice(manual.indexOf('\n## register\n'), manual.indexOf('\n## content\n'));

test.each(group.verbs.map((v) => [v.name, v] as const))(
  'the manual has a row for %s, with its options',
  (name, verb) => {
    const row = section.split('\n').find((line) => line.startsWith(`| \`${name}`)) ?? '';
    for (const word of verb.words ?? []) expect(row).toContain(word);
    for (const option of Object.keys(verb.options ?? {})) {
      const shared = ['at', 'map', 'device', 'pass-file'].includes(option);
      expect(shared ? section : row).toContain(`--${option}`);
    }
  },
);

test.each(group.verbs.map((v) => [v.name, v] as const))(
  'what %s cannot do without is what its help shows without brackets',
  async (name, verb) => {
    const needed = Object.entries(verb.options ?? {}).flatMap(([option, o]) =>
      o.needed ? [`--${option}`] : [],
    );
    const folder = name === 'begin' ? 'nowhere' : 'content/demo/register';
    const { one } = await called(name, ...(verb.words ?? []).map(() => folder));
    const missing = 'errors' in one ? one.errors.map(({ field }) => field) : [];
    expect(missing.filter((field) => field.startsWith('--')).sort()).toEqual(needed.sort());
  },
);

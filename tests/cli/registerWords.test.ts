/** What pages and refusals tell people to do can be done with this version: no act that the command does not have. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import pages from '../../content/words/en/pages-register.json' with { type: 'json' };
import sentences from '../../content/words/en/register.json' with { type: 'json' };
import { group } from '../../src/cli/register.ts';
import { root } from '../../src/cli/root.ts';

const verbs = group.verbs.map(({ name }) => name);
/** Verbs that a line of a source file names in quotes: "key", "register tasks"; names of JSON fields are not meant. */
const named = (text: string): string[] =>
  [...text.matchAll(/'[^'\n]*'/g)].flatMap(([literal]) =>
    [...literal.matchAll(/(?<![{,[])"(?:register )?([a-z]+)"(?![:,}?])/g)].map(([, verb = '']) => verb),
  );

describe('what people are told to do', () => {
  test('every verb that is named is one of the command', () => {
    const folder = join(root, 'src/register');
    const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) =>
      name.endsWith('.ts'),
    );
    const found = files.flatMap((name) => named(readFileSync(join(folder, name), 'utf8')));
    expect(found).toContain('tasks');
    expect(found.filter((verb) => !verbs.includes(verb))).toEqual([]);
    const spoken = JSON.stringify([sentences, pages.register]);
    const commands = [...spoken.matchAll(/trayhand register ([a-z]+)/g)].map(([, verb = '']) => verb);
    expect(commands.filter((verb) => !verbs.includes(verb))).toEqual([]);
  });
});

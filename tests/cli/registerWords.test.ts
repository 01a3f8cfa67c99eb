/** What pages and refusals tell people to do can be done with this version: no act that the command does not have. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import pages from '../../content/words/en/pages-register.json' with { type: 'json' };
import sentences from '../../content/words/en/register.json' with { type: 'json' };
import { group } from '../../src/cli/register.ts';
import { root } from '../../src/cli/root.ts';

const verbs = group.verbs.map(({ name }) => name);
/** Acts that the register judges and nothing here writes. */
const later = /\b(?:retires?|settles?|withdraws?|erases?|takes? (?:it|over)|succeeds?)\b|with the command/i;
/** Texts that tell somebody what to do. */
const toDo = Object.entries(pages.register).filter(([key]) => /^(?:drill|todo-)/.test(key));

/** Verbs that a line of a source file names in quotes: "key", "register tasks"; names of JSON fields are not meant. */
const named = (text: string): string[] =>
  [...text.matchAll(/'[^'\n]*'/g)].flatMap(([literal]) =>
    [...literal.matchAll(/(?<![{,[])"(?:register )?([a-z]+)"(?![:,}?])/g)].map(([, verb = '']) => verb),
  );

describe('what people are told to do', () => {
  test.each(toDo)('register.%s names no act of a later version', (_, text) => {
    expect(text).not.toMatch(later);
  });
  test('there are such texts', () => {
    expect(toDo.length).toBeGreaterThan(15);
    expect('The owner settles it').toMatch(later);
  });
  test('every verb that is named is one of the command', () => {
    const folder = join(root, 'src/register');
    const files = readdirSync(folder).filter((name) => name.endsWith('.ts'));
    const found = files.flatMap((name) => named(readFileSync(join(folder, name), 'utf8')));
    expect(found).toContain('tasks');
    expect(found.filter((verb) => !verbs.includes(verb))).toEqual([]);
    const spoken = JSON.stringify([sentences, pages.register]);
    const commands = [...spoken.matchAll(/trayhand register ([a-z]+)/g)].map(([, verb = '']) => verb);
    expect(commands.filter((verb) => !verbs.includes(verb))).toEqual([]);
  });
});

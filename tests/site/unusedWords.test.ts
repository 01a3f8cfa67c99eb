import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import calculators from '../../content/words/en/calculators.json' with { type: 'json' };
import register from '../../content/words/en/pages-register.json' with { type: 'json' };
import site from '../../content/words/en/site.json' with { type: 'json' };
import sticks from '../../content/words/en/sticks.json' with { type: 'json' };
import tasks from '../../content/words/en/tasks.json' with { type: 'json' };
import yourRun from '../../content/words/en/yourrun.json' with { type: 'json' };

const folder = 'src/site';
const source = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((name) => /\.(ts|tsx|astro)$/.test(name))
  .map((name) => readFileSync(join(folder, name), 'utf8'))
  .join('\n');

/** `group.key` as written in a source; a key with a `${part}` in it stands for every key of that form. */
function* asked(text: string): Generator<RegExp | string> {
  for (const [, key = ''] of text.matchAll(/['"]([a-z]\w*\.[\w-]+)['"]/g)) yield key;
  for (const [, key = ''] of text.matchAll(/`((?:[a-z]\w*|\$\{\w+\}\w+)\.[^`\s]+)`/g)) {
    const parts = key.split(/\$\{[^}]*\}/).map((part) => part.replace(/[^\w]/g, '\\$&'));
    yield new RegExp(`^${parts.join('[\\w-]+')}$`);
  }
}

/** Keys of a table that no source asks for. */
function unused(table: Readonly<Record<string, object>>, text: string): readonly string[] {
  const wants = [...asked(text)];
  return Object.entries(table)
    .flatMap(([group, keys]) => Object.keys(keys).map((key) => `${group}.${key}`))
    .filter((key) => !wants.some((want) => (typeof want === 'string' ? want === key : want.test(key))));
}

test('a word that nothing asks for is found', () => {
  const table = { a: { one: '', two: '', three1: '', three2: '' }, bSheet: { title: '' } };
  // biome-ignore lint/suspicious/noTemplateCurlyInString: text of a source
  const text = "tell('a.one'); tell(`a.three${n}`); tell(`${sum}Sheet.title`)";
  expect(unused(table, text)).toEqual(['a.two']);
});

test('every word of the pages is asked for by a page, and every one beside those of the tasks', () => {
  const beside = Object.entries(tasks).filter(([group]) => !/^[TW]\d/.test(group));
  expect(beside.length).toBeGreaterThan(0);
  expect(
    unused(
      {
        ...site,
        ...register,
        ...calculators,
        ...yourRun,
        sticksSheet: sticks.sticksSheet,
        ...Object.fromEntries(beside),
      },
      source,
    ),
  ).toEqual([]);
});

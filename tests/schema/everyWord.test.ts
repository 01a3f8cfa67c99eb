/**
 * Every word of every file of content/words/en is said by somebody: by the code, which writes its key or the form of it,
 * or by the content (tasks, tickets, demo runs, what an edition changed). A word that nobody says is taken out.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { models } from '../../src/practice/models/index.ts';
import { inspectSays } from '../../src/run/inspect/says.ts';
import { demands } from '../../src/schema/demands.ts';
import { readLibrary } from '../../src/schema/library.ts';

/** Sources, but for the lists of what each room says: a list is no use. */
const source = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .filter((name) => /\.(ts|tsx|astro)$/.test(name) && !/says\.ts$/i.test(name))
  .map((name) => readFileSync(join('src', name), 'utf8'))
  .join('\n');

const PART = /\$\{[^}`]*\}/;
/** Text with `${…}` in it as a form that other texts may have. */
const formOf = (text: string) =>
  new RegExp(
    `^${text
      .split(new RegExp(PART, 'g'))
      .map((part) => part.replace(/[^\w]/g, '\\$&'))
      .join('[\\w-]+')}$`,
  );

/** Whether anything of a form is written: one of parts alone would be that of every key. */
const saysMore = (text: string) => /\w/.test(text.replace(new RegExp(PART, 'g'), ''));

/** What a source asks for. A key of which the group alone is written counts where its name is written too. */
function askedIn(text: string): (key: string) => boolean {
  const found = (pattern: RegExp) => [...text.matchAll(pattern)].map(([, one = '']) => one);
  const keys = new Set(found(/['"]([a-z]\w*\.[\w-]+)['"]/g));
  const names = new Set([...found(/['"`]([\w-]+)['"`]/g), ...found(/^\s*'?([\w-]+)'?\??:/gm)]);
  const templates = found(/`((?:[a-z]\w*|\$\{[^}`]*\}\w*)\.(?:[\w-]|\$\{[^}`]*\})+)`/g);
  const whole = (template: string) => /^\w+\.\$\{[^}`]*\}$/.test(template);
  const forms = templates.filter((template) => !whole(template) && saysMore(template)).map(formOf);
  const groups = new Set(templates.filter(whole).map((template) => template.split('.')[0]));
  const parts = found(/`((?:[\w-]|\$\{[^}`]*\})+)`/g)
    .filter((part) => PART.test(part) && saysMore(part))
    .map(formOf);
  return (key) => {
    const [group = '', name = ''] = key.split('.');
    if (keys.has(key) || forms.some((form) => form.test(key))) return true;
    return groups.has(group) && (names.has(name) || parts.some((part) => part.test(name)));
  };
}

/** Keys that entries of the content say. */
function byContent(): readonly string[] {
  const { tasks, tickets, rules, demoRuns } = readLibrary(contentFiles()).library;
  const entries = <T>(shelf: ReadonlyMap<string, T>) =>
    [...shelf].map(([id, data]) => ({ id, file: 'content', lang: '', body: '', data }));
  const given = { tasks: entries(tasks), tickets: entries(tickets), rules: entries(rules) };
  return demands({ ...given, demoRuns: entries(demoRuns) })
    .filter(({ by }) => by === 'content')
    .map(({ key }) => key);
}

test('what a source asks for: keys, forms of keys, groups with names', () => {
  // biome-ignore-start lint/suspicious/noTemplateCurlyInString: text of a source
  const asked = askedIn(
    "tell('a.one'); tell(`a.three${n}`); tell(`${sum}Sheet.title`); tell(`b.${x ? 'four' : `five-${n}`}`)",
  );
  // biome-ignore-end lint/suspicious/noTemplateCurlyInString: text of a source
  expect(['a.one', 'a.three1', 'bSheet.title', 'a.two', 'b.six'].filter(asked)).toEqual([
    'a.one',
    'a.three1',
    'bSheet.title',
  ]);
});

test('every word is said', () => {
  const folder = 'content/words/en';
  const words = readdirSync(folder).flatMap((file) => {
    const groups = JSON.parse(readFileSync(join(folder, file), 'utf8')) as Record<string, object>;
    return Object.entries(groups).flatMap(([group, keys]) =>
      Object.keys(keys).map((name) => ({ file, key: `${group}.${name}` })),
    );
  });
  expect(words.length).toBeGreaterThan(2000);
  const bySources = askedIn(source);
  // Of an inspection every sentence is said by some run: tests/run/inspect/says.test.ts.
  const others = new Set<string>(inspectSays);
  for (const key of byContent()) others.add(key);
  // What the models of practice say goes by the subject's group, which each adds to its keys.
  for (const { says } of models.values()) for (const key of says) others.add(key);
  expect(words.filter(({ key }) => !bySources(key) && !others.has(key))).toEqual([]);
});

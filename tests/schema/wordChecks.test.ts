import { expect, test } from 'vitest';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { type ContentFile, readLibrary } from '../../src/schema/library.ts';

const files = contentFiles();
const english = files.filter((f) => f.path.startsWith('content/words/en/'));

/** Faults of the words when a second language stands beside the first, its file `name` changed by `change`. */
function beside(
  change: (words: Record<string, Record<string, string>>) => void,
  name = 'tasks.json',
): readonly unknown[] {
  const second = english.map(({ path, text }): ContentFile => {
    const words = JSON.parse(text);
    if (path.endsWith(`/${name}`)) change(words);
    return { path: path.replace('/en/', '/es/'), text: JSON.stringify(words) };
  });
  return readLibrary([...files, ...second]).faults.map(({ file, field, message }) => [file, field, message]);
}

test('a second language with every word has no fault', () => {
  expect(beside(() => {})).toEqual([]);
});

test('a word that is missing in it, and says where it is wanted', () => {
  const [[file, field, message] = []] = beside((w) => delete w['T05']?.['name']) as string[][];
  expect([file, field]).toEqual(['content/words/es', 'T05.name']);
  expect(message).toContain('content/tasks/T05.yaml says it');
  // Nobody demands this one: it is missing because English has it.
  expect(beside((w) => delete w['T05']?.['order'])).toEqual([
    ['content/words/es', 'T05.order', 'no words in this language'],
  ]);
});

test('other places than in English', () => {
  const other = (text: string) =>
    beside((w) => {
      w['sheet'] = { ...w['sheet'], rev: text };
    }, 'site.json');
  expect(other('{revision}ª revisión, {revision}')).toEqual([]);
  expect(other('Rev {rev}')).toEqual([
    ['content/words/es/site.json', 'sheet.rev', 'its places are not those of en: {revision}'],
  ]);
  expect(other('todas')).toHaveLength(1);
});

test('a word that English does not have', () => {
  expect(
    beside((w) => {
      w['T05'] = { ...w['T05'], extra: 'más' };
    }),
  ).toEqual([['content/words/es/tasks.json', 'T05.extra', 'no such words in en']]);
});

test('a file of words that cannot be read is one fault, and not as many as it holds words', () => {
  const broken = files.map((f) =>
    f.path === 'content/words/en/steps.json' ? { ...f, text: f.text.replace('"sum"', '"sum.of"') } : f,
  );
  expect(readLibrary(broken).faults).toEqual([
    expect.objectContaining({
      file: 'content/words/en/steps.json',
      field: 'cut.sum.of',
      message: 'a key is letters, digits and hyphens',
      todo: 'mend this name',
    }),
  ]);
});

test('a sentence that a room says cannot be taken out of English', () => {
  const without = files.map((f) =>
    f.path === 'content/words/en/run.json' ? { ...f, text: f.text.replace('"sleeve"', '"sleeves"') } : f,
  );
  expect(readLibrary(without).faults).toEqual([
    {
      file: 'content/words/en',
      field: 'run.sleeve',
      message: 'no words, and src/run/says.ts says it',
      todo: 'write the text in a file of this folder',
    },
  ]);
});

/** When a set that comes is the one that lies here, and when its sheet was changed. */
import { expect, test } from 'vitest';
import type { SetFile } from '../../src/practice/sheet.ts';
import { isChangedSet, isSameSet } from '../../src/site/device/sheets.ts';

const set: SetFile = { v: 1, kind: 'set', sheet: 'sheet-7', bench: 3, person: 'p-1', task: 'T05' };
const made = (draws: number): SetFile => ({ ...set, of: { id: 'sheet-7', families: [{ draws }] } });

test.each([
  ['the same of the works', set, { ...set }, [true, false]],
  ['the same made one', made(2), made(2), [true, false]],
  ['a made one that was changed', made(2), made(3), [false, true]],
  ['a made one under the name of one of the works', set, made(2), [false, true]],
  ['another bench', made(2), { ...made(3), bench: 4 }, [false, false]],
  ['another person', set, { ...set, person: 'p-2' }, [false, false]],
  ['another task', set, { ...set, task: 'T13' }, [false, false]],
])('%s', (_, one, other, wanted) => {
  expect([isSameSet(one, other), isChangedSet(one, other)]).toEqual(wanted);
});

/** What an erase takes from this device beside the register's texts. Apart from register.ts: only the register's page does it. */
import type { SetFile } from '../../practice/sheet.ts';
import { namesWithout } from '../drills/forgetting.ts';
import { openStore } from './store.ts';

/**
 * Takes the people who were erased out of the kept names, and puts away the kept sheet if it was set for one of them, with
 * what is written on it, and such sheets as wait for it. May be done again at any time.
 * @returns whether there was anything to take
 */
export async function forget(erased: ReadonlySet<string>): Promise<boolean> {
  if (erased.size === 0) return false;
  const change = (await openStore()).transaction(['sheet', 'texts'], 'readwrite');
  const [sheets, texts] = [change.objectStore('sheet'), change.objectStore('texts')];
  const isGone = ({ person }: SetFile): boolean => erased.has(person);
  let took = false;

  const sheet = await sheets.get('set');
  if (sheet !== undefined && isGone(sheet.set)) {
    await sheets.delete('set');
    took = true;
  }
  const waiting = JSON.parse((await texts.get('waiting')) ?? '[]') as readonly SetFile[];
  if (waiting.some(isGone)) {
    await texts.put(JSON.stringify(waiting.filter((set) => !isGone(set))), 'waiting');
    took = true;
  }
  const names = await texts.get('people');
  const left = names === undefined ? undefined : namesWithout(names, erased);
  if (left !== names) {
    await (left === undefined ? texts.delete('people') : texts.put(left, 'people'));
    took = true;
  }
  await change.done;
  return took;
}

/** A sheet by number and title, as lists name it. Pure. */
import type { Tell } from './speak.ts';

/** One that was made on a page without a title goes by its number, which is then not said twice. */
export function sheetName(number: number | string, title: string, tell: Tell): string {
  const plain = tell('answersPage.sheetPlain', { number });
  return title === plain ? plain : tell('answersPage.sheet', { number, title });
}

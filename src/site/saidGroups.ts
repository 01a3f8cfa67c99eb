/** Groups of words that the working of a family says: its model's own, and the trade's steps that it takes over. */
import { drawOf } from '../practice/draw.ts';
import type { Family } from '../practice/family.ts';
import { keyOf } from '../practice/key.ts';
import { sheetSeed } from '../practice/sheet.ts';
import { practiceOf } from '../schema/practice.ts';
import { library } from './library.ts';

/** Draws whose working is listened to: the steps of a function of the trade are all of one group. */
const HEARD = 4;

const { world } = practiceOf(library);
const groupOf = (key: string): string => key.split('.')[0] ?? '';
const known = new Map<string, readonly string[]>();

export function groupsSaidBy(family: Family): readonly string[] {
  const old = known.get(family.id);
  if (old !== undefined) return old;
  const heard = new Set((world.models.get(family.model)?.says ?? []).map(groupOf));
  const speak = ({ say }: { readonly say: string }) => {
    heard.add(groupOf(say));
    return '';
  };
  for (let n = 1; n <= HEARD; n++)
    keyOf(drawOf(family, sheetSeed('heard', 1, n), world), world, { lang: 'en', speak });
  known.set(family.id, [...heard]);
  return [...heard];
}

/** A run that is not begun. */
import { bareFile, type RunFile } from '../../run/edit/file.ts';
import type { RunData } from './workOut.ts';

/** In the channel of 4 in, where the catalogue has it. */
export function blankOf({ items }: RunData): RunFile {
  const trays = items.filter(({ kind }) => kind === 'tray');
  const tray = trays.find(({ id }) => id === 'card-4') ?? trays[0];
  return bareFile({ v: 1, tray: tray?.id ?? '', start: { kind: 'ladder', joint: 'socketed' }, legs: [] });
}

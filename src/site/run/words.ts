/** Parts of a run in words. */
import type { Catalogue, Tray } from '../../run/catalogue.ts';
import type { WayOutChoice } from '../../run/edit/ways.ts';
import type { FittingItem } from '../../run/resolved.ts';
import type { Direction } from '../../run/types.ts';
import { inchNumber } from '../../trade/shortLength.ts';
import type { SiteKey, Tell } from '../speak.ts';

export function directionWords(dir: Direction, tell: Tell): string {
  if (typeof dir === 'string') return tell(`yourRun.dir-${dir}`);
  const plain = (deg: number) => String(Math.round(deg * 10) / 10);
  return tell('yourRun.dirDegrees', { azimuth: plain(dir.azimuthDeg), slope: plain(dir.slopeDeg) });
}

/** `flat elbow 90°`, `6 to 4 reducer, left`. */
export function fittingWords(item: FittingItem, tell: Tell): string {
  if (item.kind === 'elbow') {
    return tell(`yourRun.elbow-${item.turn}`, { angle: String(item.angleDeg) });
  }
  if (item.kind === 'reducer') {
    const values = { width: inchNumber(item.width), narrow: inchNumber(item.narrow) };
    return tell(`yourRun.reducer-${item.hand}`, values);
  }
  return tell(`yourRun.fitting-${item.kind}`);
}

/** The fitting a leg leaves by, and to which side: `flat elbow 90°, left`. */
export function choiceWords(
  { fitting, turn }: Pick<WayOutChoice, 'fitting' | 'turn'>,
  catalogue: Catalogue,
  tell: Tell,
): string {
  const item = fitting === null ? undefined : catalogue.get(fitting);
  if (item === undefined) return tell('yourRun.fromStart');
  const words = fittingWords(item as FittingItem, tell);
  const aside = turn === 'left' || turn === 'right';
  return aside ? tell('yourRun.fittingSide', { fitting: words, side: tell(`yourRun.side-${turn}`) }) : words;
}

/** One thing, or so many: picks the key that ends in `-one` or `-many`. */
export const counted = (count: number): 'one' | 'many' => (count === 1 ? 'one' : 'many');

/** `4 in aluminium channel, ventilated`. */
export const trayWords = (tray: Tray, tell: Tell): string =>
  tell('yourRun.tray', {
    width: inchNumber(tray.width),
    metal: tell(`yourRun.metal-${tray.metal}`),
    bottom: tell(`yourRun.bottom-${tray.bottom}`),
  });

/** What is proven of a plan of so many sticks: that one fewer does not do. */
export function provenKey(used: number): SiteKey {
  if (used === 0) return 'yourRun.proven-none';
  return used === 1 ? 'yourRun.proven-first' : `yourRun.proven-${counted(used - 1)}`;
}

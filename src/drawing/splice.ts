import { layPlate } from './plate.ts';
import { laySleeve } from './sleeve.ts';
import type { SleeveGiven, SpliceGiven } from './spliceGiven.ts';
import { render, type Sheet } from './svg.ts';
import type { Drawing, How } from './types.ts';

export type { SpliceGiven } from './spliceGiven.ts';

/** What a balloon may point at, by the kind of joint. */
export const spliceParts = {
  socketed: [
    'first-channel',
    'second-channel',
    'first-mark',
    'second-mark',
    'channel-end',
    'splice',
    'fastener',
    'opening',
    'section',
  ],
  butt: ['first-channel', 'second-channel', 'channel-end', 'splice', 'fastener', 'opening', 'section'],
} as const;

export function drawSplice(given: SpliceGiven, how: How): Drawing {
  return render(laySplice(given, how), how);
}

export function laySplice(given: SpliceGiven, how: How): Sheet {
  return isSleeve(given) ? laySleeve(given, how) : layPlate(given, how);
}

const isSleeve = (given: SpliceGiven): given is SleeveGiven => given.item.kind === 'sleeve';

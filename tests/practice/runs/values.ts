/** Values as a family might draw them, by chance: the same seed gives the same. */
import { DAMAGE_KINDS, type WantedDamage } from '../../../src/practice/runs/damage.ts';
import type { Bench } from '../../../src/practice/runs/sound.ts';
import { PARTED, type RouteValues, TURNS } from '../../../src/practice/runs/wants.ts';
import { fromInches } from '../../../src/trade/length.ts';
import { catalogue } from '../../run/practice.ts';
import type { Chance } from '../../run/randomRun.ts';
import { tables } from '../../run/tables.ts';

export const bench: Bench = { catalogue, tables };

export function valuesBy(chance: Chance): RouteValues {
  const barrier = chance.yes(0.2);
  const power = ['control-12', 'power-10', 'power-6', 'power-3'] as const;
  const signal = ['signal-2', 'signal-8'] as const;
  return {
    width: barrier ? 'card-6' : chance.of(['card-4', 'card-6'] as const),
    heading: chance.of(['north', 'east', 'south', 'west'] as const),
    start: chance.of(['ladder', 'tray', 'free'] as const),
    end: chance.of(['instrument', 'tray', 'free'] as const),
    legs: Array.from({ length: chance.whole(1, 4) }, () => ({
      length: fromInches(chance.whole(16 * 40, 16 * 420) / 16),
      turn: chance.of(TURNS),
      parted: chance.of(['none', 'none', ...PARTED] as const),
      part: chance.whole(30, 70),
    })),
    cables: Array.from({ length: chance.whole(2, 3) }, (_, i) => ({
      cable: barrier && i > 0 ? chance.of(signal) : chance.of(power),
      count: chance.whole(1, 2),
    })),
    maxSpan: fromInches(chance.of([60, 72, 84, 96])),
    lowF: 10,
    highF: 110,
    nowF: chance.whole(30, 95),
    barrier,
    splice: chance.of(['sleeve', 'sleeve', 'plate'] as const),
  };
}

export const wantedBy = (chance: Chance, count: number): readonly WantedDamage[] =>
  Array.from({ length: count }, () => ({ damage: chance.of(DAMAGE_KINDS), pick: chance.whole(0, 999) }));

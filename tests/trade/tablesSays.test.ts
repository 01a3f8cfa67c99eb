import { expect, test } from 'vitest';
import words from '../../content/words/en/tables.json' with { type: 'json' };
import { adoptedOf } from '../../src/schema/site.ts';
import { tradeTablesOf } from '../../src/schema/tradeTables.ts';
import { ampacity } from '../../src/trade/ampacity.ts';
import type { Answered } from '../../src/trade/answer.ts';
import { type ExpansionGiven, expansion } from '../../src/trade/expansion.ts';
import { groundpath } from '../../src/trade/groundpath.ts';
import { inEdition } from '../../src/trade/inEdition.ts';
import { jumper } from '../../src/trade/jumper.ts';
import { fromInches } from '../../src/trade/length.ts';
import { marking } from '../../src/trade/marking.ts';
import { radius } from '../../src/trade/radius.ts';
import { separation } from '../../src/trade/separation.ts';
import { tablesSays } from '../../src/trade/tablesSays.ts';
import { transition } from '../../src/trade/transition.ts';
import { holdSays } from './sayings.ts';
import { library, tables } from './tables.ts';

const adopted = tradeTablesOf(
  library.rules.values(),
  library.sources,
  adoptedOf([
    {
      id: 'paper',
      document: 'Standard 7',
      by: 'A. Reyes',
      on: '2026-02-10',
      values: [
        { key: 'movement', value: fromInches(0.75) },
        { key: 'edition', value: 2020 },
      ],
    },
  ]),
);
const grow = (more: Partial<ExpansionGiven>, by = tables) =>
  expansion({ metal: 'steel', lowF: 0, highF: 100, installF: 50, ...more }, by.expansion);
const path = { deviceA: 60, markedAreaIn2: 1, qualifiedService: true, identified: true };
const steel = { ...path, metal: 'steel' as const };

/** One call or more for every sentence of these calculators. */
const answers: readonly Answered<object>[] = [
  jumper({ devicesA: [20], metal: 'copper' }, tables.jumper),
  jumper({ devicesA: [20, 30], metal: 'aluminium' }, tables.jumper),
  jumper({ devicesA: [2000], metal: 'copper' }, tables.jumper),
  groundpath({ ...steel, qualifiedService: false, identified: false }, tables.groundpath),
  groundpath({ ...path, metal: 'stainless' }, tables.groundpath),
  groundpath({ ...steel, deviceA: 601 }, tables.groundpath),
  groundpath({ ...path, metal: 'aluminium', deviceA: 2001 }, tables.groundpath),
  groundpath(steel, tables.groundpath),
  groundpath({ ...steel, markedAreaIn2: 0 }, tables.groundpath),
  grow({ lengthFt: 150, movementOf: { lengthFt: 1, dF: 1 } }),
  grow({ installF: 101, movementOf: { lengthFt: 1, dF: -1 } }),
  grow({ highF: 0 }),
  grow({}, adopted),
  radius({ cable: 'TC', odIn: 1 }, tables.radius),
  radius({ cable: 'TC', odIn: 1, shielded: true }, tables.radius),
  radius({ cable: 'MC smooth', odIn: 1, shielded: true }, tables.radius),
  radius({ cable: 'MC shielded', odIn: 1, conductorOdIn: 1 }, tables.radius),
  radius({ cable: 'MC shielded', odIn: 1, conductorOdIn: 0.1 }, tables.radius),
  radius({ cable: 'ITC', odIn: 1 }, tables.radius),
  radius({ cable: 'PLTC', odIn: 1 }, tables.radius),
  transition({ gapFt: 5, secured: true, guarded: true }, tables.transition),
  transition({ gapFt: 7, secured: false, guarded: false }, tables.transition),
  transition({ gapFt: 5, secured: true, guarded: true, edition: 2017 }, tables.transition),
  ampacity({ currentCarrying: 4, coverFt: 5 }, tables.ampacity),
  ampacity({ currentCarrying: 4, coverFt: 7 }, tables.ampacity),
  marking({ volts: 100 }, tables.marking),
  inEdition<Parameters<typeof marking>[0], object>({ volts: 700 }, adopted.usual.edition, (given) =>
    marking(given, tables.marking),
  ),
  separation({ volts: [100, 2000], mc: false }, tables.separation),
  separation({ volts: [100, 2000], mc: true }, tables.separation),
  separation({ volts: [2000], mc: true }, tables.separation),
  separation({ volts: [100], mc: true }, tables.separation),
];

holdSays(tablesSays, answers);

test('no sentence of the tables lies unused', () => {
  const keys = Object.entries(words).flatMap(([group, texts]) =>
    Object.keys(texts).map((key) => `${group}.${key}`),
  );
  const said = new Set([...tablesSays, ...tables.changes.map((c) => c.what.say)]);
  expect(keys.filter((key) => !said.has(key))).toEqual([]);
});

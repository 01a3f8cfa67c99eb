import { describe, expect, test } from 'vitest';
import { cite } from '../../src/schema/source.ts';
import type { Answered, Source } from '../../src/trade/answer.ts';
import { arc } from '../../src/trade/arc.ts';
import { type BeamGiven, beam } from '../../src/trade/beam/beam.ts';
import { equivalent } from '../../src/trade/equivalent.ts';
import { geometrySays } from '../../src/trade/geometrySays.ts';
import * as geometrySources from '../../src/trade/geometrySources.ts';
import { fromInches } from '../../src/trade/length.ts';
import { mechanicsSays } from '../../src/trade/mechanicsSays.ts';
import * as mechanicsSources from '../../src/trade/mechanicsSources.ts';
import { METALS } from '../../src/trade/metals.ts';
import { mitre } from '../../src/trade/mitre.ts';
import { notch } from '../../src/trade/notch.ts';
import { offset } from '../../src/trade/offset.ts';
import { section } from '../../src/trade/section.ts';
import { type LoadedTray, span } from '../../src/trade/span.ts';
import { vertical } from '../../src/trade/vertical.ts';
import { holdSays } from './sayings.ts';
import { library } from './tables.ts';

const tray: LoadedTray = {
  id: 'card-4',
  loadTable: [
    { spanFt: 4, lbPerFt: 34 },
    { spanFt: 10, lbPerFt: 5.4 },
  ],
  weightLbPerFt: 1.2,
  adopted: false,
  source: mechanicsSources.CONCENTRATED,
};
const thin = { widthIn: 4, depthIn: 1.75, thicknessIn: 0.0747 };
const steel = { section: thin, metal: 'steel' } as const;
const beamOf = (given: Partial<BeamGiven>) =>
  beam({ spansIn: [96], loadLbPerFt: 10, ePsi: 29e6, iIn4: 0.05, ...given });

const mechanics: readonly Answered<object>[] = [
  section({ ...thin, lipIn: 0.5, holes: [{ diameterIn: 0.5, count: 1, in: 'web' }] }),
  section({ ...thin, holes: [{ diameterIn: 0.5, count: 2, in: 'legs', heightIn: 1 }] }),
  beamOf({ overhangLeftIn: 12, overhangRightIn: 12 }),
  beamOf({ spansIn: [96, 96], loadLbPerFt: undefined, loads: [{ span: 0, lbPerFt: 10 }] }),
  span({ tray, loadLbPerFt: 6.4, pointLb: 2 }),
  span({ tray: { ...tray, adopted: true }, loadLbPerFt: 1 }),
  span({ tray, loadLbPerFt: 60 }),
  span({ ...steel, loadLbPerFt: 20 }),
  span({ ...steel, loadLbPerFt: 1 }),
  span({
    section: { widthIn: 4, depthIn: 4, thicknessIn: 0.5 },
    metal: 'steel',
    loadLbPerFt: 900,
    deflectionRatio: null,
  }),
  equivalent({ staticLb: 50, spanFt: 10, otherLbPerFt: 5 }),
  vertical({ dropFt: 20, lbPerFt: 5, loadSupports: 2 }),
  vertical({ dropFt: 20, lbPerFt: 5, loadSupports: 1 }),
];
const geometry: readonly Answered<object>[] = [
  offset({ offset: fromInches(6), angleDeg: 30 }),
  offset({ offset: fromInches(6), roll: fromInches(8), angleDeg: 31 }),
  mitre({ widthIn: 4, turnDeg: 90 }),
  notch({ depthIn: 1.75, bendDeg: 90 }),
  arc({ insideRadiusIn: 12, widthIn: 4, turnDeg: 90 }),
];

describe('mechanics', () => holdSays(mechanicsSays, mechanics));
describe('geometry', () => holdSays(geometrySays, geometry));

describe('sources', () => {
  const all: readonly Source[] = [
    ...Object.values(mechanicsSources),
    ...Object.values(geometrySources),
    ...Object.values(METALS).flatMap((m) => m.sources),
  ];
  test.each(all)('$id, $where: stands in content/sources as it is cited', (source) => {
    expect(cite(source, source.edition, library.sources)).toEqual(source);
  });

  test('every answer names where its figures come from', () => {
    for (const { sources } of [...mechanics, ...geometry]) expect(sources.length).toBeGreaterThan(0);
  });
});

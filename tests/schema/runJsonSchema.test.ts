/** The published JSON Schema of a run takes what the command takes, and refuses what it refuses, as far as it can judge. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { runJson } from '../../src/run/writeRun.ts';
import { runShape } from '../../src/schema/run.ts';
import { runJsonSchema } from '../../src/schema/runJsonSchema.ts';
import { GET } from '../../src/site/pages/run.schema.json.ts';
import { randomRuns } from '../run/randomRun.ts';

type JsonSchema = Parameters<typeof z.fromJSONSchema>[0];
/** Read back from its published text, as another program would read it. */
const published = z.fromJSONSchema(JSON.parse(await GET().text()) as JsonSchema);
const taken = (given: unknown) => published.safeParse(given).success;

const least = () => ({
  v: 1,
  tray: 'card-4',
  start: { kind: 'ladder', joint: 'socketed' },
  legs: [{ id: 'A', from: 'start', fitting: null, dir: 'N', length: `12'-3 1/2"` }],
});
const cable = {
  id: 'C1',
  type: 'TC',
  odIn: 0.5,
  lbPerFt: 0.2,
  count: 1,
  make: 'multiconductor',
  use: 'power',
  to: 'A',
};
const joint = { leg: 'A', at: 60, kind: 'socketed' };

test('whole runs by chance are taken by both', () => {
  fc.assert(
    fc.property(randomRuns, (run) => {
      const json = JSON.parse(JSON.stringify(runJson(run))) as unknown;
      expect(taken(json)).toBe(true);
      expect(runShape.safeParse(json).success).toBe(true);
    }),
    { numRuns: 200 },
  );
});

describe('both say the same of', () => {
  test.each<[string, boolean, Record<string, unknown>]>([
    ['the least run', true, {}],
    ['a length as a fraction', true, { stock: '87 ½' }],
    ['a length in millimetres', true, { stock: '2 350 mm' }],
    ['a stock of 0', false, { stock: 0 }],
    ['a kerf of 0', true, { kerf: 0 }],
    ['a kerf below 0', false, { kerf: -0.125 }],
    ['a length that is true', false, { stock: true }],
    ['a length that is null', false, { stock: null }],
    ['a length without a figure', false, { stock: 'long' }],
    ['another version', false, { v: 2 }],
    ['no tray', false, { tray: undefined }],
    ['an unknown field', false, { colour: 'red' }],
    ['an unknown field of the start', false, { start: { kind: 'free', joint: 'free', colour: 'red' } }],
    ['a start of no kind', false, { start: { kind: 'wall', joint: 'free' } }],
    ['no legs', false, { legs: [] }],
    ['a leg without a length', false, { legs: [{ id: 'A', from: 'start', fitting: null, dir: 'N' }] }],
    ['a direction of no name', false, { legs: [{ ...least().legs[0], dir: 'NE' }] }],
    [
      'an azimuth of 359.9',
      true,
      { legs: [{ ...least().legs[0], dir: { azimuthDeg: 359.9, slopeDeg: -90 } }] },
    ],
    ['an azimuth of 360', false, { legs: [{ ...least().legs[0], dir: { azimuthDeg: 360, slopeDeg: 0 } }] }],
    ['a slope above 90', false, { legs: [{ ...least().legs[0], dir: { azimuthDeg: 0, slopeDeg: 90.1 } }] }],
    ['a fitting left out', false, { legs: [{ id: 'A', from: 'start', dir: 'N', length: 10 }] }],
    ['a jumper that is none', true, { start: { kind: 'tray', joint: 'butt', jumper: null } }],
    ['a jumper of a size', true, { start: { kind: 'tray', joint: 'butt', jumper: '3 AWG' } }],
    ['a jumper of no size', false, { start: { kind: 'tray', joint: 'butt', jumper: '5 AWG' } }],
    ['a joint', true, { joints: [{ ...joint, insertions: [5, '4 1/2'], hole: 'large', bare: true }] }],
    ['a joint of no kind', false, { joints: [{ ...joint, kind: 'glued' }] }],
    ['three insertions', false, { joints: [{ ...joint, insertions: [5, 5, 5] }] }],
    ['one insertion', false, { joints: [{ ...joint, insertions: [5] }] }],
    ['an end', true, { ends: [{ leg: 'A', kind: 'instrument', joint: 'free', open: 60 }] }],
    ['an end at a ladder', false, { ends: [{ leg: 'A', kind: 'ladder', joint: 'free' }] }],
    ['a support', true, { supports: [{ leg: 'A', at: 12, way: 'vertical', hold: 'load' }] }],
    ['a support that is glued', false, { supports: [{ leg: 'A', at: 12, way: 'vertical', hold: 'glue' }] }],
    ['a cable', true, { cables: [cable] }],
    ['a tube', true, { cables: [{ ...cable, type: 'tube', use: 'air', side: 'left' }] }],
    ['a cable of no type', false, { cables: [{ ...cable, type: 'rope' }] }],
    ['a cable of no width', false, { cables: [{ ...cable, odIn: 0 }] }],
    ['a width that is a text', false, { cables: [{ ...cable, odIn: '0.5' }] }],
    ['half a cable', false, { cables: [{ ...cable, count: 0.5 }] }],
    ['a step', true, { marks: [{ leg: 'A', at: 12, kind: 'step' }] }],
    ['a mark of no kind', false, { marks: [{ leg: 'A', at: 12, kind: 'dent' }] }],
    ['places', true, { places: [{ leg: 'A', at: [0, `4'`] }] }],
    ['limits', true, { limits: { maxSpan: `6'`, edition: 2017 } }],
    ['an edition there is none of', false, { limits: { edition: 2018 } }],
    ['temperatures', true, { temps: { lowF: -10, highF: 110, nowF: 70 } }],
    ['temperatures without the one now', false, { temps: { lowF: -10, highF: 110 } }],
  ])('%s: %s', (_, good, rest) => {
    const given = JSON.parse(JSON.stringify({ ...least(), ...rest })) as unknown;
    expect(runShape.safeParse(given).success).toBe(good);
    expect(taken(given)).toBe(good);
  });
});

test('it names its draft, and lets no field pass that it does not know', () => {
  expect(runJsonSchema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
  const open: string[] = [];
  const walk = (part: unknown, path: string) => {
    if (typeof part !== 'object' || part === null) return;
    if ('properties' in part && (part as { additionalProperties?: unknown }).additionalProperties !== false) {
      open.push(path);
    }
    for (const [key, value] of Object.entries(part)) walk(value, `${path}.${key}`);
  };
  walk(runJsonSchema, '');
  expect(open).toEqual([]);
});

import { describe, expect, test } from 'vitest';
import { calcContent } from '../../src/cli/calcContent.ts';
import { askCalculator } from './ask.ts';
import { type Printed, trayhand } from './command.ts';

const content = calcContent();
/** A calculator called as its verb calls it, with what JSON makes of its input. */
function ask(verb: string, given: unknown): Printed {
  const input: unknown = JSON.parse(JSON.stringify(given));
  return JSON.parse(JSON.stringify(askCalculator(verb, input, content)));
}
function good(verb: string, given: unknown): Printed {
  const answer = ask(verb, given);
  expect(answer).toMatchObject({ ok: true });
  return answer;
}
/** Fields of the faults. */
const bad = (verb: string, given: unknown) => {
  const answer = ask(verb, given);
  expect(answer).toMatchObject({ ok: false });
  return answer.errors.map((e) => {
    expect([e.message, e.todo].every((text) => text.length > 5)).toBe(true);
    return e.field;
  });
};

const beam = { spansIn: [120, 96], loadLbPerFt: 10, ePsi: 29e6, iIn4: 0.05 };
const section = { widthIn: 4, depthIn: 1.75, thicknessIn: 0.0747 };
const tray = { tray: 'card-4', loadLbPerFt: 6.4 };
const bySection = { section, metal: 'steel', loadLbPerFt: 20 };

describe('shapes of results', () => {
  test('every field, and no other', () => {
    const fields = (verb: string, given: unknown) => Object.keys(good(verb, given).result);
    expect(fields('section', section)).toEqual([
      'areaIn2',
      'iIn4',
      'sLegIn3',
      'sWebIn3',
      'centroidIn',
      'weightLbPerFt',
    ]);
    expect(fields('beam', beam)).toEqual([
      'reactionsLb',
      'supportMomentsLbIn',
      'spanMaxima',
      'deflections',
      'tipDeflectionsIn',
    ]);
    expect(fields('span', tray)).toEqual(['maxSpanIn', 'governs', 'refer', 'acceptance']);
    expect(fields('span', bySection)).toEqual(['maxSpanIn', 'governs', 'refer', 'acceptance', 'why']);
    expect(fields('equivalent', { staticLb: 0, spanFt: 8, otherLbPerFt: 0 })).toEqual([
      'equivalentLbPerFt',
      'totalLbPerFt',
    ]);
    expect(fields('offset', { offset: 6, angleDeg: 30 })).toEqual([
      'trueOffsetIn',
      'travelIn',
      'advanceIn',
      'multiplier',
      'shrinkIn',
      'trade',
    ]);
  });

  test('why is a text', () => {
    const { result } = good('span', { ...tray, loadLbPerFt: 60 });
    expect(result).toMatchObject({ maxSpanIn: null, refer: true, why: expect.stringContaining('No row') });
  });

  test('offset and roll take texts', () => {
    const { result } = good('offset', { offset: '8"', roll: "1'", angleDeg: 45 });
    expect(result['trueOffsetIn']).toBeCloseTo(Math.sqrt(208), 12);
  });

  test('null turns deflection off; the ratio left out is 200', () => {
    const at = (more: object) => good('span', { ...bySection, loadLbPerFt: 8, ...more }).result;
    expect(at({})).toEqual(at({ deflectionRatio: 200 }));
    expect(at({ deflectionRatio: null })['governs']).toBe('leg buckling');
    expect(at({})['governs']).toBe('deflection');
  });
});

describe('faults: every one, by its path', () => {
  test.each([
    ['beam', {}, ['spansIn', 'ePsi', 'iIn4', 'loadLbPerFt']],
    ['beam', { ...beam, spansIn: [] }, ['spansIn']],
    ['beam', { ...beam, spansIn: [0, -1, '9', 5] }, ['spansIn[0]', 'spansIn[1]', 'spansIn[2]']],
    ['beam', { ...beam, loads: [] }, ['loads']],
    ['beam', { ...beam, loadLbPerFt: null }, ['loadLbPerFt']],
    [
      'beam',
      { ...beam, loadLbPerFt: -1, ePsi: 0, iIn4: true, edition: 2023 },
      ['loadLbPerFt', 'ePsi', 'iIn4', 'edition'],
    ],
    [
      'beam',
      {
        ...beam,
        loadLbPerFt: undefined,
        loads: [
          { span: -1, lbPerFt: 1 },
          { span: 2, lbPerFt: 1 },
          { span: 0.5, lbPerFt: 1 },
          { span: 0, lbPerFt: -1 },
          { span: 1 },
        ],
      },
      ['loads[0].span', 'loads[2].span', 'loads[3].lbPerFt', 'loads[4].lbPerFt', 'loads[1].span'],
    ],
    [
      'beam',
      {
        ...beam,
        overhangRightIn: 12,
        points: [
          { span: -1, atIn: 0, lb: 1 },
          { span: 0, atIn: 120.001, lb: 1 },
          { span: 1, atIn: -1, lb: 1 },
          { span: 2, atIn: 12.1, lb: 1 },
          { span: 3, atIn: 0, lb: 1 },
          { span: 0, atIn: 1, lb: -1 },
          { span: -2, atIn: 1, lb: 1 },
        ],
      },
      [
        'points[2].atIn',
        'points[5].lb',
        'points[6].span',
        'points[0].span',
        'points[1].atIn',
        'points[3].atIn',
        'points[4].span',
      ],
    ],
    ['beam', { ...beam, overhangLeftIn: -1, overhangRightIn: '12' }, ['overhangLeftIn', 'overhangRightIn']],
    ['section', {}, ['widthIn', 'depthIn', 'thicknessIn']],
    ['section', { ...section, thicknessIn: 1.75 }, ['thicknessIn']],
    ['section', { ...section, thicknessIn: 2, depthIn: 5 }, ['thicknessIn']],
    ['section', { ...section, lipIn: 0.0747 }, ['lipIn']],
    ['section', { ...section, lipIn: 2.01 }, ['lipIn']],
    ['section', { ...section, widthIn: '4', densityLbIn3: 0, x: 1 }, ['widthIn', 'densityLbIn3', 'x']],
    [
      'section',
      {
        ...section,
        holes: [
          { diameterIn: 0.5, count: 1, in: 'legs' },
          { diameterIn: 0.5, count: 1, in: 'web', heightIn: 1 },
          { diameterIn: 0, count: 1.5, in: 'lip' },
          { diameterIn: 0.5, count: 2, in: 'legs', heightIn: 1.6 },
          { diameterIn: 2, count: 2, in: 'web' },
        ],
      },
      [
        'holes[0].heightIn',
        'holes[1].heightIn',
        'holes[2].diameterIn',
        'holes[2].count',
        'holes[2].in',
        'holes[3].heightIn',
        'holes[4].diameterIn',
      ],
    ],
    ['span', {}, ['loadLbPerFt', 'tray']],
    ['span', { ...tray, tray: 'card-5' }, ['tray']],
    ['span', { ...tray, tray: 'card-4-sleeve' }, ['tray']],
    [
      'span',
      { tray: 'card-5', loadLbPerFt: -1, pointLb: '2', deflectionRatio: 0 },
      ['loadLbPerFt', 'pointLb', 'deflectionRatio', 'tray'],
    ],
    ['span', { ...tray, section, metal: 'steel' }, ['section', 'metal']],
    ['span', { section, loadLbPerFt: 1 }, ['metal']],
    ['span', { metal: 'copper', loadLbPerFt: 1 }, ['metal', 'section']],
    [
      'span',
      { ...bySection, section: { ...section, densityLbIn3: 0.3, lipIn: 3 } },
      ['section.densityLbIn3', 'section.lipIn'],
    ],
    ['span', { ...tray, edition: 2023 }, ['edition']],
    ['equivalent', { staticLb: -1, spanFt: 0 }, ['staticLb', 'spanFt', 'otherLbPerFt']],
    ['vertical', { dropFt: 0, lbPerFt: -1, loadSupports: 0 }, ['dropFt', 'lbPerFt', 'loadSupports']],
    ['vertical', { dropFt: 1, lbPerFt: 1, loadSupports: 1.5 }, ['loadSupports']],
    ['offset', { offset: 0, angleDeg: 90, roll: -1 }, ['offset', 'angleDeg', 'roll']],
    ['offset', { offset: 6, angleDeg: 0 }, ['angleDeg']],
    ['mitre', { widthIn: 0, turnDeg: 180 }, ['widthIn', 'turnDeg']],
    ['notch', { depthIn: 0, bendDeg: 0 }, ['depthIn', 'bendDeg']],
    ['arc', { insideRadiusIn: -1, widthIn: null, turnDeg: '90' }, ['insideRadiusIn', 'widthIn', 'turnDeg']],
  ])('%s %j', (verb, given, fields) => {
    expect(bad(verb, given)).toEqual(fields);
  });
});

describe('edges that are answered', () => {
  test.each([
    ['beam', { ...beam, points: [{ span: 1, atIn: 96, lb: 0 }], overhangLeftIn: 0 }],
    ['beam', { ...beam, loadLbPerFt: undefined, loads: [] }],
    ['beam', { ...beam, overhangLeftIn: 5, points: [{ span: -1, atIn: 5, lb: 1 }] }],
    ['section', { ...section, lipIn: 2, holes: [] }],
    ['section', { ...section, lipIn: 0.0748 }],
    ['span', { ...tray, loadLbPerFt: 0, pointLb: 0 }],
    ['offset', { offset: 6, angleDeg: 30, roll: 0 }],
    ['arc', { insideRadiusIn: 0, widthIn: 4, turnDeg: 179.9 }],
    ['vertical', { dropFt: 1, lbPerFt: 0, loadSupports: 1 }],
  ])('%s %j', (verb, given) => {
    good(verb, given);
  });

  test('numbers beyond all numbers are refused, not printed', () => {
    expect(bad('beam', { ...beam, spansIn: [1e200, 1e200] })).toEqual(['']);
  });
});

test('1,000 spans by the catalogue: each answered as one alone is', async () => {
  const { exit, many } = await trayhand(['calc', 'span'], Array(1000).fill(tray));
  expect(exit).toBe(0);
  expect(many).toEqual(Array(1000).fill(good('span', tray)));
});

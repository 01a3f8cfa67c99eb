/** A channel's cross-section: area, stiffness, strength, weight. */
import { section as sectionOf } from '../../trade/section.ts';
import type { Fields } from './fields.ts';
import { drawChannel } from './figures/channel.ts';
import { measure } from './measure.ts';
import { type Clash, line, sum } from './sum.ts';

/** Asked alike by the section and by the span of a section. */
export const sectionFields = {
  widthIn: { kind: 'size', bounds: { above: 0 }, label: 'sectionSum.width' },
  depthIn: { kind: 'size', bounds: { above: 0 }, label: 'sectionSum.depth' },
  thicknessIn: { kind: 'size', bounds: { above: 0 }, label: 'sectionSum.thickness' },
  lipIn: {
    kind: 'size',
    bounds: { above: 0 },
    label: 'sectionSum.lip',
    hint: 'sectionSum.lipHint',
    optional: true,
  },
  holes: {
    kind: 'rows',
    label: 'sectionSum.holes',
    hint: 'sectionSum.holesHint',
    row: 'sectionSum.hole',
    add: 'sectionSum.addHole',
    takeOut: 'sectionSum.takeOutHole',
    least: 0,
    fresh: { in: 'web', count: 1 },
    fields: {
      in: {
        kind: 'choice',
        list: true,
        label: 'sectionSum.holeIn',
        options: [
          { value: 'web', label: 'sectionSum.inWeb' },
          { value: 'legs', label: 'sectionSum.inLegs' },
        ],
      },
      diameterIn: { kind: 'size', bounds: { above: 0 }, label: 'sectionSum.holeDiameter' },
      count: { kind: 'count', from: 1, label: 'sectionSum.holeCount' },
      heightIn: {
        kind: 'size',
        bounds: { from: 0 },
        label: 'sectionSum.holeHeight',
        only: { field: 'in', is: ['legs'] },
      },
    },
  },
} as const satisfies Fields;

interface Shape {
  readonly widthIn: number;
  readonly depthIn: number;
  readonly thicknessIn: number;
  readonly lipIn?: number | undefined;
  readonly holes?:
    | readonly {
        readonly in: 'web' | 'legs';
        readonly diameterIn: number;
        readonly count: number;
        readonly heightIn?: number | undefined;
      }[]
    | undefined;
}

const hair = 1e-9;

/** What cannot be a channel: walls that meet, lips that do not fit, holes that are not within the metal. */
export function sectionClashes({
  widthIn,
  depthIn,
  thicknessIn,
  lipIn,
  holes = [],
}: Shape): readonly Clash[] {
  const clashes: Clash[] = [];
  if (thicknessIn >= depthIn) clashes.push(['thicknessIn', line('sectionSum.asThickAsDeep')]);
  else if (2 * thicknessIn >= widthIn) clashes.push(['thicknessIn', line('sectionSum.legsMeet')]);
  else if (lipIn !== undefined && 2 * thicknessIn >= depthIn)
    clashes.push(['thicknessIn', line('sectionSum.lipOnWeb')]);
  if (lipIn !== undefined && lipIn <= thicknessIn) clashes.push(['lipIn', line('sectionSum.lipThin')]);
  else if (lipIn !== undefined && lipIn > widthIn / 2 + hair)
    clashes.push(['lipIn', line('sectionSum.lipsMeet')]);
  const left = { web: widthIn - 2 * thicknessIn, legs: 2 * (depthIn - thicknessIn) };
  for (const [i, hole] of holes.entries()) {
    const { diameterIn, heightIn } = hole;
    const half = diameterIn / 2;
    if (
      hole.in === 'legs' &&
      heightIn !== undefined &&
      (heightIn < half - hair || heightIn + half > depthIn + hair)
    )
      clashes.push([`holes[${i}].heightIn`, line('sectionSum.holeOutside')]);
    left[hole.in] -= diameterIn * hole.count;
    if (left[hole.in] <= hair) clashes.push([`holes[${i}].diameterIn`, line('sectionSum.nothingLeft')]);
  }
  return clashes;
}

export const section = sum()({
  id: 'section',
  fields: {
    ...sectionFields,
    densityLbIn3: {
      kind: 'number',
      as: 'density',
      bounds: { above: 0 },
      label: 'sectionSum.density',
      hint: 'sectionSum.densityHint',
      optional: true,
    },
  },
  example: {
    widthIn: 4.25,
    depthIn: 1.75,
    thicknessIn: 0.125,
    lipIn: undefined,
    holes: [{ in: 'web', diameterIn: 0.5625, count: 1, heightIn: undefined }],
    densityLbIn3: 0.0975,
  },
  check: sectionClashes,
  work: sectionOf,
  say: ({ areaIn2, iIn4, sLegIn3, sWebIn3, centroidIn, weightLbPerFt }) => ({
    asked: line('sectionSum.asked'),
    huge: line('sectionSum.answer', { s: measure('in3', Math.min(sLegIn3, sWebIn3)) }),
    more: [line(sLegIn3 <= sWebIn3 ? 'sectionSum.atLegs' : 'sectionSum.atWeb')],
    rows: [
      { label: line('sectionSum.area'), value: measure('in2', areaIn2) },
      { label: line('sectionSum.inertia'), value: measure('in4', iIn4) },
      { label: line('sectionSum.sLegs'), value: measure('in3', sLegIn3) },
      { label: line('sectionSum.sWeb'), value: measure('in3', sWebIn3) },
      { label: line('sectionSum.centroid'), value: measure('inches', centroidIn) },
      { label: line('sectionSum.weight'), value: measure('lbPerFt', weightLbPerFt) },
    ],
  }),
  figure: drawChannel,
  caption: 'sectionSum.caption',
});

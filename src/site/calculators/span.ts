/** How far apart supports may stand: by the tray's own load table, or an estimate to ask the engineer with. */
import type { Metal } from '../../trade/metals.ts';
import { type LoadedTray, span as spanOf } from '../../trade/span.ts';
import type { Fields } from './fields.ts';
import { type Measure, measure, tapeAtMost } from './measure.ts';
import { sectionClashes, sectionFields } from './section.ts';
import { line, sum } from './sum.ts';

/** The trays of the catalogue, with the words that a list shows them by. */
export interface SpanData {
  readonly trays: readonly { readonly text: string; readonly tray: LoadedTray }[];
}

const ofSection = { field: 'by', is: ['section'] } as const;
const { widthIn, depthIn, thicknessIn, lipIn, holes } = sectionFields;

const fields = {
  by: {
    kind: 'choice',
    label: 'spanSum.by',
    options: [
      { value: 'tray', label: 'spanSum.byTray' },
      { value: 'section', label: 'spanSum.bySection' },
    ],
  },
  tray: {
    kind: 'choice',
    list: true,
    label: 'spanSum.tray',
    only: { field: 'by', is: ['tray'] },
    // The catalogue's, by `fit`.
    options: [] as readonly { readonly value: string }[],
  },
  metal: {
    kind: 'choice',
    label: 'spanSum.metal',
    only: ofSection,
    options: [
      { value: 'aluminium', label: 'metal.aluminium' },
      { value: 'steel', label: 'metal.steel' },
      { value: 'stainless', label: 'metal.stainless' },
    ],
  },
  widthIn: { ...widthIn, only: ofSection },
  depthIn: { ...depthIn, only: ofSection },
  thicknessIn: { ...thicknessIn, only: ofSection },
  lipIn: { ...lipIn, only: ofSection },
  holes: { ...holes, only: ofSection },
  loadLbPerFt: {
    kind: 'number',
    as: 'lbPerFt',
    bounds: { from: 0 },
    label: 'spanSum.load',
    hint: 'spanSum.loadHint',
  },
  pointLb: {
    kind: 'number',
    as: 'lb',
    bounds: { from: 0 },
    label: 'spanSum.point',
    hint: 'spanSum.pointHint',
    optional: true,
  },
  ratio: {
    kind: 'choice',
    list: true,
    label: 'spanSum.ratio',
    only: ofSection,
    options: [
      { value: 200, text: 'L/200' },
      { value: 240, text: 'L/240' },
      { value: 360, text: 'L/360' },
      { value: 0, label: 'spanSum.ratioOff' },
    ],
  },
} as const satisfies Fields;

export const span = sum<SpanData>()({
  id: 'span',
  fields,
  fit: (asked, { trays }) => ({
    ...asked,
    tray: { ...fields.tray, options: trays.map(({ text, tray }) => ({ value: tray.id, text })) },
  }),
  example: {
    by: 'tray',
    tray: 'card-4',
    metal: 'aluminium',
    widthIn: 4.25,
    depthIn: 1.75,
    thicknessIn: 0.125,
    lipIn: undefined,
    holes: [],
    loadLbPerFt: 12,
    pointLb: undefined,
    ratio: 200,
  },
  check: ({ widthIn, depthIn, thicknessIn, lipIn, holes }) =>
    widthIn === undefined || depthIn === undefined || thicknessIn === undefined
      ? []
      : sectionClashes({ widthIn, depthIn, thicknessIn, lipIn, holes }),
  work: (
    { tray: id, metal, widthIn, depthIn, thicknessIn, lipIn, holes, loadLbPerFt, pointLb, ratio },
    { trays },
  ) => {
    const load = { loadLbPerFt, pointLb };
    const tray = trays.find((one) => one.tray.id === id)?.tray;
    if (tray !== undefined) return spanOf({ ...load, tray });
    if (widthIn === undefined || depthIn === undefined || thicknessIn === undefined)
      throw new Error('a span is asked of a tray or of a section');
    return spanOf({
      ...load,
      section: { widthIn, depthIn, thicknessIn, lipIn, holes },
      metal: (metal ?? 'steel') satisfies Metal,
      deflectionRatio: ratio === 0 ? null : ratio,
    });
  },
  say: ({ maxSpanIn, governs, refer, acceptance }, { loadLbPerFt, pointLb = 0 }) => {
    const asked = line(pointLb === 0 ? 'spanSum.asked' : 'spanSum.askedPoint', {
      load: measure('lbPerFt', loadLbPerFt),
      point: measure('lb', pointLb),
    });
    if (maxSpanIn === null) return { asked, huge: line('sums.refer') };
    const at: Readonly<Record<string, Measure>> = { span: tapeAtMost(maxSpanIn) };
    return refer
      ? {
          asked,
          huge: line('sums.refer'),
          more: [line('spanSum.estimate', at), line(governedBy[governs])],
        }
      : {
          asked,
          huge: line('spanSum.answer', at),
          more: acceptance ? [line('spanSum.adopted')] : [],
        };
  },
});

const governedBy = {
  table: 'spanSum.byTable',
  bending: 'spanSum.byBending',
  'leg buckling': 'spanSum.byBuckling',
  deflection: 'spanSum.byDeflection',
  ceiling: 'spanSum.byCeiling',
} as const;

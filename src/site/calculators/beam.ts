/** A beam over any number of supports: what each carries, where it bends most, how far it sags. */
import { beam as beamOf } from '../../trade/beam/beam.ts';
import { inches, readLength } from '../../trade/length.ts';
import { METALS } from '../../trade/metals.ts';
import { drawBeam } from './figures/beam.ts';
import { measure, tape } from './measure.ts';
import { type Clash, line, sum } from './sum.ts';

const overhang = { kind: 'length', scale: 'feet', from: 'from 0', optional: true } as const;

export const beam = sum()({
  id: 'beam',
  fields: {
    spans: {
      kind: 'rows',
      label: 'beamSum.spans',
      hint: 'beamSum.spansHint',
      first: 0,
      row: 'beamSum.span',
      add: 'beamSum.addSpan',
      takeOut: 'beamSum.takeOutSpan',
      least: 1,
      fresh: { lbPerFt: 0 },
      fields: {
        length: { kind: 'length', scale: 'feet', from: 'above 0', label: 'beamSum.length' },
        lbPerFt: { kind: 'number', as: 'lbPerFt', bounds: { from: 0 }, label: 'beamSum.load' },
      },
    },
    points: {
      kind: 'rows',
      label: 'beamSum.points',
      row: 'beamSum.point',
      add: 'beamSum.addPoint',
      takeOut: 'beamSum.takeOutPoint',
      least: 0,
      fresh: { place: 'span', span: 0 },
      fields: {
        place: {
          kind: 'choice',
          list: true,
          label: 'beamSum.place',
          options: [
            { value: 'span', label: 'beamSum.onSpan' },
            { value: 'left', label: 'beamSum.onLeft' },
            { value: 'right', label: 'beamSum.onRight' },
          ],
        },
        span: { kind: 'count', from: 0, label: 'beamSum.which', only: { field: 'place', is: ['span'] } },
        at: { kind: 'length', scale: 'feet', from: 'from 0', label: 'beamSum.at', hint: 'beamSum.atHint' },
        lb: { kind: 'number', as: 'lb', bounds: { from: 0 }, label: 'beamSum.lb' },
      },
    },
    overhangLeft: { ...overhang, label: 'beamSum.left', hint: 'beamSum.overhangHint' },
    overhangRight: { ...overhang, label: 'beamSum.right' },
    metal: {
      kind: 'choice',
      label: 'beamSum.metal',
      options: [
        { value: 'aluminium', label: 'metal.aluminium' },
        { value: 'steel', label: 'metal.steel' },
        { value: 'stainless', label: 'metal.stainless' },
        { value: 'other', label: 'beamSum.otherMetal' },
      ],
    },
    ePsi: {
      kind: 'number',
      as: 'psi',
      bounds: { above: 0 },
      label: 'beamSum.e',
      only: { field: 'metal', is: ['other'] },
    },
    iIn4: { kind: 'number', as: 'in4', bounds: { above: 0 }, label: 'beamSum.i', hint: 'beamSum.iHint' },
  },
  example: {
    spans: [
      { length: readLength("8'"), lbPerFt: 4 },
      { length: readLength("8'"), lbPerFt: 4 },
      { length: readLength("5'"), lbPerFt: 4 },
    ],
    points: [{ place: 'span', span: 0, at: readLength("4'"), lb: 20 }],
    overhangLeft: undefined,
    overhangRight: undefined,
    metal: 'aluminium',
    ePsi: undefined,
    iIn4: 0.25,
  },
  check: ({ spans, points, overhangLeft, overhangRight }) => {
    const clashes: Clash[] = [];
    for (const [i, { place, span = 0, at }] of points.entries()) {
      const room = { span: spans[span]?.length, left: overhangLeft, right: overhangRight }[place];
      if (place === 'span' && room === undefined)
        clashes.push([`points[${i}].span`, line('beamSum.noSpan', { last: spans.length - 1 })]);
      else if (room === undefined || room === 0)
        clashes.push([`points[${i}].place`, line('beamSum.noOverhang')]);
      else if (at > room)
        clashes.push([`points[${i}].at`, line('beamSum.beyond', { length: tape(inches(room)) })]);
    }
    return clashes;
  },
  work: ({ spans, points, overhangLeft, overhangRight, metal, ePsi, iIn4 }) => {
    const figures = metal === 'other' ? undefined : METALS[metal];
    const answered = beamOf({
      spansIn: spans.map(({ length }) => inches(length)),
      loads: spans.map(({ lbPerFt }, span) => ({ span, lbPerFt })),
      points: points.map(({ place, span = 0, at, lb }) => ({
        span: { span, left: -1, right: spans.length }[place],
        atIn: inches(at),
        lb,
      })),
      overhangLeftIn: overhangLeft === undefined ? undefined : inches(overhangLeft),
      overhangRightIn: overhangRight === undefined ? undefined : inches(overhangRight),
      ePsi: figures?.ePsi ?? ePsi ?? 0,
      iIn4,
    });
    const elastic = figures?.sources.filter(({ id }) => id === 'elastic-figures') ?? [];
    return { ...answered, sources: [...answered.sources, ...elastic] };
  },
  say: ({ reactionsLb, supportMomentsLbIn, spanMaxima, deflections, tipDeflectionsIn }) => {
    const most = Math.max(...reactionsLb);
    const lifts = reactionsLb.flatMap((lb, support) => (lb < -1e-9 ? [{ support, lb }] : []));
    const [left, right] = tipDeflectionsIn;
    const tips = [
      ['beamSum.tipLeft', left],
      ['beamSum.tipRight', right],
    ] as const;
    return {
      huge: line('beamSum.answer', { support: reactionsLb.indexOf(most), lb: measure('lb', most) }),
      more:
        lifts.length === 0
          ? []
          : lifts.map(({ support, lb }) => line('beamSum.lifts', { support, lb: measure('lb', -lb) })),
      rows: [
        ...reactionsLb.map((lb, support) => ({
          label: line('beamSum.reaction', { support }),
          value: measure('lb', lb),
        })),
        ...supportMomentsLbIn.flatMap((lbIn, support) =>
          lbIn === 0
            ? []
            : [{ label: line('beamSum.supportMoment', { support }), value: measure('lbFt', lbIn / 12) }],
        ),
        ...spanMaxima.map(({ span, atIn, lbIn }) => ({
          label: line('beamSum.greatest', { span, at: tape(atIn) }),
          value: measure('lbFt', lbIn / 12),
        })),
        ...deflections.map(({ span, atIn, in: sag }) => ({
          label: line('beamSum.sag', { span, at: tape(atIn) }),
          value: measure('inches', sag),
        })),
        ...tips.flatMap(([key, sag]) =>
          sag === null ? [] : [{ label: line(key), value: measure('inches', sag) }],
        ),
      ],
    };
  },
  figure: drawBeam,
  caption: 'beamSum.caption',
});

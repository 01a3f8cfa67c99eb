/** How a beam was worked out, line by line. Supports and spans are numbered from 0 at the left, as in the answer. */
import type { Step } from '../answer.ts';
import { figure } from '../figure.ts';
import { type Frame, type Overhang, weightOf } from './frame.ts';
import type { BeamResult } from './given.ts';
import type { Supports, ThreeMoments } from './supports.ts';

/** Share of all loads: a reaction nearer under 0 than that is what decimals left, not uplift. */
const NO_SHARE = 1e-9;

export function workingOf(frame: Frame, { equations }: Supports, result: BeamResult): readonly Step[] {
  const { spans, left, right, stiffness } = frame;
  const total = [...spans, left, right].reduce((sum, part) => sum + (part === null ? 0 : weightOf(part)), 0);
  const uplift = result.reactionsLb.flatMap((lb, support) => (lb < -NO_SHARE * total ? [support] : []));
  return [
    {
      say: 'beam.frame',
      values: { spans: spans.length, supports: spans.length + 1, last: spans.length },
      value: stiffness,
      unit: 'lb-in2',
    },
    ...overhangStep('left', left),
    ...spans.map((span, i) => ({
      say: 'beam.span',
      values: {
        span: i,
        length: figure(span.lengthIn),
        load: figure(span.lbPerIn * 12),
        points: span.points.length,
      },
      value: weightOf(span),
      unit: 'lb',
    })),
    ...overhangStep('right', right),
    ...momentSteps(equations, result),
    ...result.reactionsLb.map((lb, support) => ({
      say: 'beam.reaction',
      values: { support },
      value: lb,
      unit: 'lb',
    })),
    { say: 'beam.sum', value: total, unit: 'lb' },
    ...uplift.map((support) => ({ say: 'beam.uplift', values: { support } })),
    ...result.spanMaxima.map(({ span, atIn, lbIn }) => ({
      say: 'beam.greatest',
      values: { span, at: figure(atIn) },
      value: lbIn,
      unit: 'lb-in',
    })),
    ...result.deflections.map(({ span, atIn, in: value }) =>
      value === 0
        ? { say: 'beam.noSag', values: { span } }
        : { say: 'beam.deflection', values: { span, at: figure(atIn) }, value, unit: 'in' },
    ),
    ...result.tipDeflectionsIn.flatMap((value, i): readonly Step[] =>
      value === null ? [] : [{ say: i === 0 ? 'beam.tipLeft' : 'beam.tipRight', value, unit: 'in' }],
    ),
    { say: 'beam.small' },
    { say: equations.length > 0 ? 'beam.splices' : 'beam.engineer' },
  ];
}

function momentSteps(
  equations: readonly ThreeMoments[],
  { supportMomentsLbIn }: BeamResult,
): readonly Step[] {
  return [
    { say: equations.length === 0 ? 'beam.statics' : 'beam.equations' },
    ...equations.map(({ support, before, at, after, right }) => ({
      say: 'beam.equation',
      values: {
        support,
        left: support - 1,
        right: support + 1,
        before: figure(before),
        at: figure(at),
        after: figure(after),
        loads: figure(right),
      },
    })),
    ...supportMomentsLbIn.map((lbIn, support) => ({
      say: 'beam.moment',
      values: { support },
      value: lbIn,
      unit: 'lb-in',
    })),
  ];
}

function overhangStep(side: 'left' | 'right', overhang: Overhang | null): readonly Step[] {
  if (overhang === null) return [];
  const { lengthIn, lbPerIn, points } = overhang;
  return [
    {
      say: side === 'left' ? 'beam.overhangLeft' : 'beam.overhangRight',
      values: { length: figure(lengthIn), load: figure(lbPerIn * 12), points: points.length },
      value: weightOf(overhang),
      unit: 'lb',
    },
  ];
}

/**
 * The span that a section without a load table might carry: the least of what its strength in bending allows, what
 * a share of the span allows as deflection, and a ceiling. Holes are out, lips are not counted on to hold the legs
 * straight, nothing is known of splices and clamps: an estimate, for the engineer.
 */
import type { Source, Step } from './answer.ts';
import { digits, figure } from './figure.ts';
import { LEG_BUCKLING, PARALLEL_AXES, SIMPLE_BEAM } from './mechanicsSources.ts';
import { METALS, type Metal } from './metals.ts';
import { netOf, type SectionShape } from './section.ts';

/** No estimate goes beyond it. */
const CEILING_IN = 144;
/** A flat element with one free edge, pressed evenly. */
const FREE_EDGE = 0.43;
/** In bending. */
const SAFETY = 1.67;

export interface Estimate {
  readonly maxSpanIn: number;
  readonly governs: 'bending' | 'leg buckling' | 'deflection' | 'ceiling';
  readonly steps: readonly Step[];
  readonly sources: readonly Source[];
}

export interface EstimateGiven {
  readonly section: SectionShape;
  readonly metal: Metal;
  readonly loadLbPerFt: number;
  readonly pointLb: number;
  readonly deflectionRatio: number | null;
}

export function estimateSpan({ section, metal, ...load }: EstimateGiven): Estimate {
  const { yieldPsi, ePsi, poisson, sources } = METALS[metal];
  const net = netOf(section);
  const modulus = Math.min(net.sLegIn3, net.sWebIn3);
  const legIn = section.depthIn - section.thicknessIn;
  const slender = legIn / section.thicknessIn;
  const bucklesPsi = (FREE_EDGE * Math.PI ** 2 * ePsi) / (12 * (1 - poisson ** 2) * slender ** 2);
  const buckles = bucklesPsi < yieldPsi;
  const stressPsi = Math.min(yieldPsi, bucklesPsi) / SAFETY;
  const moment = stressPsi * modulus;

  const lbPerIn = load.loadLbPerFt / 12;
  const strongIn = spanOfMoment(lbPerIn, load.pointLb, moment);
  const bending = buckles ? 'leg buckling' : 'bending';
  const stiffIn =
    load.deflectionRatio === null
      ? Number.POSITIVE_INFINITY
      : spanOfDeflection(lbPerIn, load.pointLb, (ePsi * net.iIn4) / load.deflectionRatio);
  const maxSpanIn = Math.min(strongIn, stiffIn, CEILING_IN);
  const governs = maxSpanIn === strongIn ? bending : maxSpanIn === stiffIn ? 'deflection' : 'ceiling';

  const shown = { ceiling: CEILING_IN };
  const steps: Step[] = [
    {
      say: 'span.section',
      values: { inertia: digits(net.iIn4), legs: digits(net.sLegIn3), web: digits(net.sWebIn3) },
      value: modulus,
      unit: 'in3',
    },
    {
      say: 'span.buckles',
      values: { leg: figure(legIn), thickness: figure(section.thicknessIn), slender: figure(slender, 2) },
      value: bucklesPsi,
      unit: 'psi',
    },
    {
      say: buckles ? 'span.stressBuckling' : 'span.stressYield',
      values: { yields: figure(yieldPsi), buckles: figure(bucklesPsi, 0), safety: SAFETY },
      value: stressPsi,
      unit: 'psi',
    },
    { say: 'span.moment', values: { stress: figure(stressPsi, 0) }, value: moment, unit: 'lb-in' },
    limitStep('span.strong', 'span.strongBeyond', strongIn, shown),
    ...(load.deflectionRatio === null
      ? [{ say: 'span.deflectionOff' }]
      : [
          limitStep('span.stiff', 'span.stiffBeyond', stiffIn, {
            ...shown,
            ratio: figure(load.deflectionRatio),
          }),
        ]),
    { say: 'span.ceiling', values: shown },
    { say: 'span.least', value: maxSpanIn, unit: 'in' },
  ];
  return { maxSpanIn, governs, steps, sources: [SIMPLE_BEAM, PARALLEL_AXES, LEG_BUCKLING, ...sources] };
}

function limitStep(say: string, beyond: string, spanIn: number, values: NonNullable<Step['values']>): Step {
  return spanIn > CEILING_IN ? { say: beyond, values } : { say, values, value: spanIn, unit: 'in' };
}

/**
 * The L at which wL²/8 + PL/4 = M; endless when nothing bends it. Written so that no difference is taken, and by the
 * greater of both parts, so that no square overflows or vanishes.
 */
function spanOfMoment(w: number, p: number, moment: number): number {
  const point = p / 4;
  const even = Math.sqrt(w) * Math.sqrt(moment / 2);
  const greater = Math.max(point, even);
  if (greater === 0) return Number.POSITIVE_INFINITY;
  return (2 * moment) / (point + greater * Math.sqrt((point / greater) ** 2 + (even / greater) ** 2));
}

/**
 * The L at which 5wL³/384 + PL²/48 = EI/ratio, which is the deflection over L; it only grows with L. Halved down to
 * neighbouring numbers below the ceiling; endless above it.
 */
function spanOfDeflection(w: number, p: number, limit: number): number {
  const asked = (l: number) => l * l * ((5 * w * l) / 384 + p / 48);
  if (asked(CEILING_IN) <= limit) return Number.POSITIVE_INFINITY;
  let [low, high] = [0, CEILING_IN];
  for (;;) {
    const middle = low + (high - low) / 2;
    if (!(middle > low && middle < high)) return low;
    if (asked(middle) <= limit) low = middle;
    else high = middle;
  }
}

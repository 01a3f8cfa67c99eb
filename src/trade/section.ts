/**
 * A channel's cross-section, legs up: area, place of the centroid, stiffness and strength about the axis that lies
 * across the channel. Square corners; the metal is a row of rectangles, the holes are rectangles taken out.
 */
import type { Answered, Step } from './answer.ts';
import { digits, figure } from './figure.ts';
import { PARALLEL_AXES, STEEL_DENSITY } from './mechanicsSources.ts';

/** Holes of one kind that lie in one cross-section. A hole takes out diameter × thickness. */
export interface SectionHole {
  /** Above 0. */
  readonly diameterIn: number;
  /** In one cross-section, both legs together; from 1. */
  readonly count: number;
  readonly in: 'web' | 'legs';
  /** Holes in legs: centre above the web's outer face. */
  readonly heightIn?: number | undefined;
}

/** Outside measures. */
export interface SectionShape {
  readonly widthIn: number;
  readonly depthIn: number;
  readonly thicknessIn: number;
  /** Legs' edges turned inward: from the leg's outer face, thickness included; above the thickness, at most half the width. */
  readonly lipIn?: number | undefined;
  readonly holes?: readonly SectionHole[] | undefined;
}

export interface SectionGiven extends SectionShape {
  /** Steel when left out. */
  readonly densityLbIn3?: number | undefined;
}

export interface SectionResult {
  /** Net of holes, as are the next four. */
  readonly areaIn2: number;
  /** About the axis through the centroid, across the channel. */
  readonly iIn4: number;
  /** Section modulus at the legs' edges. */
  readonly sLegIn3: number;
  /** Section modulus at the web's outer face. */
  readonly sWebIn3: number;
  /** Above the web's outer face. */
  readonly centroidIn: number;
  /** Without regard to holes. */
  readonly weightLbPerFt: number;
}

/** Steel, lb/in³. */
export const DENSITY = 0.2836;

/** A rectangle of metal, or of a hole (`count` below 0), by its breadth across and its height. */
interface Part {
  readonly name: 'web' | 'legs' | 'lips' | 'webHoles' | 'legHoles';
  readonly count: number;
  readonly breadthIn: number;
  readonly heightIn: number;
  /** Of its own centroid above the web's outer face. */
  readonly atIn: number;
}

/**
 * Figures of a cross-section, with their working: each rectangle, then their sums by the theorem of parallel axes.
 *
 * @param given  inches, outside; density lb/in³. Thickness below half of the width and below the depth, holes that
 *               leave metal beside them: the input's shape sees to that (schema/sectionInput.ts)
 * @returns      in², in⁴, in³ and in net of holes; lb/ft without regard to them. Unrounded
 * @throws       nothing: measures that leave no metal give figures that mean nothing
 * Source: PARALLEL_AXES and STEEL_DENSITY in mechanicsSources.ts.
 */
export function section(given: SectionGiven): Answered<SectionResult> {
  const { depthIn, densityLbIn3 = DENSITY } = given;
  const metal = metalOf(given);
  const parts = [...metal, ...holesOf(given)];
  const net = netOf(given);
  const weightLbPerFt = areaOf(metal) * 12 * densityLbIn3;
  const shown = {
    centroid: digits(net.centroidIn),
    inertia: digits(net.iIn4),
    rest: digits(depthIn - net.centroidIn),
  };
  const steps: Step[] = [
    ...parts.map((part) => ({
      say: `section.${part.name}`,
      values: {
        count: Math.abs(part.count),
        breadth: figure(part.breadthIn),
        height: figure(part.heightIn),
        at: figure(part.atIn),
      },
      value: areaOf([part]),
      unit: 'in2',
    })),
    { say: 'section.area', value: net.areaIn2, unit: 'in2' },
    { say: 'section.centroid', value: net.centroidIn, unit: 'in' },
    { say: 'section.inertia', value: net.iIn4, unit: 'in4' },
    { say: 'section.atLegs', values: shown, value: net.sLegIn3, unit: 'in3' },
    { say: 'section.atWeb', values: shown, value: net.sWebIn3, unit: 'in3' },
    {
      say: 'section.weight',
      values: { area: digits(areaOf(metal)), density: figure(densityLbIn3) },
      value: weightLbPerFt,
      unit: 'lb/ft',
    },
    { say: 'section.leftOut' },
  ];
  return {
    result: { ...net, weightLbPerFt },
    steps,
    sources: given.densityLbIn3 === undefined ? [PARALLEL_AXES, STEEL_DENSITY] : [PARALLEL_AXES],
  };
}

/** The section's figures, net of holes. */
export function netOf(shape: SectionShape): Omit<SectionResult, 'weightLbPerFt'> {
  const parts = [...metalOf(shape), ...holesOf(shape)];
  const areaIn2 = areaOf(parts);
  const centroidIn = parts.reduce((sum, part) => sum + areaOf([part]) * part.atIn, 0) / areaIn2;
  const iIn4 = parts.reduce((sum, part) => {
    const own = (part.count * part.breadthIn * part.heightIn ** 3) / 12;
    return sum + own + areaOf([part]) * (part.atIn - centroidIn) ** 2;
  }, 0);
  return {
    areaIn2,
    iIn4,
    sLegIn3: iIn4 / (shape.depthIn - centroidIn),
    sWebIn3: iIn4 / centroidIn,
    centroidIn,
  };
}

function areaOf(parts: readonly Part[]): number {
  return parts.reduce((sum, { count, breadthIn, heightIn }) => sum + count * breadthIn * heightIn, 0);
}

/** The web over the whole width, the legs on it, the lips within the legs. */
function metalOf({ widthIn, depthIn, thicknessIn: t, lipIn }: SectionShape): readonly Part[] {
  const leg = depthIn - t;
  return [
    { name: 'web', count: 1, breadthIn: widthIn, heightIn: t, atIn: t / 2 },
    { name: 'legs', count: 2, breadthIn: t, heightIn: leg, atIn: t + leg / 2 },
    ...(lipIn === undefined
      ? []
      : [{ name: 'lips' as const, count: 2, breadthIn: lipIn - t, heightIn: t, atIn: depthIn - t / 2 }]),
  ];
}

function holesOf({ thicknessIn: t, holes = [] }: SectionShape): readonly Part[] {
  return holes.map(({ diameterIn, count, in: where, heightIn = 0 }) =>
    where === 'web'
      ? { name: 'webHoles', count: -count, breadthIn: diameterIn, heightIn: t, atIn: t / 2 }
      : { name: 'legHoles', count: -count, breadthIn: t, heightIn: diameterIn, atIn: heightIn },
  );
}

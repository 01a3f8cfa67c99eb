/** Tools for the place (T06, ticket W6, W8): blade and brush by the metal, tether by the weight, lamp by the area, wrench by the torque. */
import { figure } from '../../../trade/figure.ts';
import type { Drawn } from '../../model.ts';
import { slippingModel } from '../parts/slipping.ts';
import { keysOf, lineOf, numberFact, wordFact } from '../parts/told.ts';

const METALS = ['aluminium', 'galvanised', 'stainless'] as const;
const AREAS = ['plain', 'division-2', 'division-1'] as const;
const wants = {
  metal: METALS,
  area: AREAS,
  height: 'whole',
  tool: 'decimal',
  battery: 'decimal',
  torque: 'whole',
} as const;
type Given = Drawn<typeof wants>;

/** What the tethers in the store are marked for, lb (training values). */
export const TETHERS_LB = [5, 10, 15] as const;
/** Ranges of the two torque wrenches in the store, ft-lb (training values). */
export const WRENCHES = { small: [5, 20], large: [25, 75] } as const;

interface Job extends Given {
  readonly cuts: 'saw' | 'grinder';
  readonly tethered: boolean;
  readonly wrench: 'by range' | 'other' | 'impact';
}

const weight = ({ tool, battery }: Job) => tool + battery;
function tetherOf(job: Job): string {
  if (!job.tethered) return 'none';
  const found = TETHERS_LB.find((lb) => lb >= weight(job));
  return found === undefined ? 'none' : `tether-${found}`;
}
function wrenchOf({ torque, wrench }: Job): string {
  if (wrench === 'impact') return 'impact';
  const small = torque <= WRENCHES.small[1];
  return small === (wrench === 'by range') ? 'small' : 'large';
}

const say = lineOf('working');

export const toolsForThePlace = slippingModel<typeof wants, Job>({
  wants,
  plan: (drawn) => {
    const job: Job = { ...drawn, cuts: 'saw', tethered: true, wrench: 'by range' };
    const heavy = weight(job);
    const betweenRanges = drawn.torque > WRENCHES.small[1] && drawn.torque < WRENCHES.large[0];
    // A weight on the mark itself, or too heavy for every tether, leaves doubt.
    return betweenRanges || TETHERS_LB.some((lb) => Math.abs(lb - heavy) < 0.1) || heavy > TETHERS_LB[2]
      ? null
      : job;
  },
  facts: ({ metal, area, height, tool, battery, torque }) => ({
    metal: wordFact(metal),
    area: wordFact(area),
    height: numberFact(height),
    tool: numberFact(tool, 1),
    battery: numberFact(battery, 1),
    torque: numberFact(torque),
    rule: wordFact('rule'),
  }),
  asks: {
    blade: {
      kind: 'choice',
      answer: ({ metal, cuts }) => (cuts === 'grinder' ? 'grinder' : `blade-${metal}`),
      steps: () => [say('byMetal')],
    },
    brush: { kind: 'choice', answer: ({ metal }) => `brush-${metal}`, steps: () => [] },
    tether: {
      kind: 'choice',
      answer: tetherOf,
      steps: (job) => [
        say('together', { tool: figure(job.tool, 1), battery: figure(job.battery, 1) }, weight(job), 'lb'),
      ],
    },
    lamp: { kind: 'choice', answer: ({ area }) => `lamp-${area}`, steps: () => [say('byArea')] },
    wrench: { kind: 'choice', answer: wrenchOf, steps: ({ torque }) => [say('byTorque', { torque })] },
  },
  slips: {
    grinder: (job) => ({ ...job, cuts: 'grinder' }),
    carbonSteel: (job) => (job.metal === 'stainless' ? { ...job, metal: 'galvanised' } : null),
    aluminiumOnSteel: (job) => (job.metal === 'aluminium' ? null : { ...job, metal: 'aluminium' }),
    steelOnAluminium: (job) => (job.metal === 'aluminium' ? { ...job, metal: 'galvanised' } : null),
    stainlessForAll: (job) => (job.metal === 'stainless' ? null : { ...job, metal: 'stainless' }),
    untethered: (job) => ({ ...job, tethered: false }),
    batteryForgotten: (job) => ({ ...job, battery: 0 }),
    weightDoubled: (job) =>
      2 * weight(job) > TETHERS_LB[2] ? null : { ...job, tool: 2 * job.tool, battery: 2 * job.battery },
    plainLamp: (job) => ({ ...job, area: 'plain' }),
    divisionsExchanged: (job) =>
      job.area === 'plain' ? null : { ...job, area: job.area === 'division-1' ? 'division-2' : 'division-1' },
    impact: (job) => ({ ...job, wrench: 'impact' }),
    outOfRange: (job) => ({ ...job, wrench: 'other' }),
  },
  figures: () => [],
  figured: () => [],
  says: keysOf('working', ['byMetal', 'together', 'byArea', 'byTorque']),
});

/** Lock-out and test for dead (W5): own lock, own tag, what is stored, and a tester that is proven twice. */

import type { Drawn } from '../../model.ts';
import { heldAgainst, mayGo, mustAsk, mustStop, type Scene, scenesModel } from '../parts/scenes.ts';

const wants = {
  people: 'whole',
  locks: 'whole',
  volts: ['0', '4', '12', '24', '38', '46', '110', '120', '277'],
  psi: ['0', '15', '30', '60', '90'],
  card: 'whole',
  apart: ['0', '2', '4'],
} as const;
type D = Drawn<typeof wants>;

/** 29 CFR 1910.147(f)(3): in a group each puts on a lock of his own (from memory). */
const locks: Scene<D> = heldAgainst({
  seen: (d) => d.locks,
  limit: (d) => d.people,
  beyond: 'below',
  atLimit: 'holds',
  right: 'stop',
  unit: 'locks',
  habits: { oneMissing: (d) => d.people - 1, oneForAll: () => 1 },
});
/** The highest of each conductor to each other and to ground. Dead is nothing at all: under 50 V is a figure for guarding (29 CFR 1910.333, from memory). */
const reading: Scene<D> = heldAgainst({
  seen: (d) => Number(d.volts),
  limit: () => 0,
  beyond: 'above',
  atLimit: 'holds',
  right: 'stop',
  unit: 'V',
  habits: { smallIsDead: () => 50, straysIgnored: () => Infinity },
});
const pressure: Scene<D> = heldAgainst({
  seen: (d) => Number(d.psi),
  limit: () => 0,
  beyond: 'above',
  atLimit: 'holds',
  right: 'stop',
  unit: 'psi',
  habits: { pressureLeft: () => Infinity },
});
const number: Scene<D> = heldAgainst({
  seen: (d) => d.card + Number(d.apart),
  limit: (d) => d.card,
  beyond: 'above',
  atLimit: 'holds',
  right: 'ask',
  unit: '',
  habits: { trustsLabel: () => Infinity },
});

export const lockOut = scenesModel({
  wants,
  asks: 5,
  beside: (d) => ({ panel: d.card + Number(d.apart) }),
  clear: (d) => d.locks <= d.people,
  scenes: {
    locks,
    reading,
    pressure,
    number,
    'proved-once': mustStop('provedOnce'),
    'one-reading': mustStop('onePhase'),
    between: mustStop('onePhase'),
    'tag-only': mustAsk('tagForLock'),
    'left-lock': mustAsk('cutsLock'),
    lunch: mustStop('othersLock'),
    hanging: mustStop('heldByMotor'),
    'key-back': mustStop('lockLent'),
    proven: mayGo(),
    handover: mayGo(),
    'group-box': mayGo(),
    blocked: mayGo(),
    'key-kept': mayGo(),
  },
});

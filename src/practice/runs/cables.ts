/**
 * Cables that practice runs carry. All figures are training values, invented: on a job each comes from the cable's own
 * sheet. Power cables name the device before them; signal cables have none.
 */
import type { CableType, RunCable } from '../../run/types.ts';

export interface PracticeCable {
  readonly type: CableType;
  readonly odIn: number;
  readonly lbPerFt: number;
  readonly use: RunCable['use'];
  readonly deviceA?: number;
}

export const CABLES = {
  'control-12': { type: 'TC', odIn: 0.56, lbPerFt: 0.22, use: 'power', deviceA: 20 },
  'power-10': { type: 'TC', odIn: 0.62, lbPerFt: 0.31, use: 'power', deviceA: 30 },
  'power-6': { type: 'TC', odIn: 0.78, lbPerFt: 0.54, use: 'power', deviceA: 60 },
  'power-3': { type: 'TC', odIn: 0.96, lbPerFt: 0.92, use: 'power', deviceA: 100 },
  'armoured-3': { type: 'MC interlocked', odIn: 0.7, lbPerFt: 1.05, use: 'power', deviceA: 30 },
  'signal-2': { type: 'PLTC', odIn: 0.34, lbPerFt: 0.08, use: 'signal' },
  'signal-8': { type: 'PLTC', odIn: 0.52, lbPerFt: 0.16, use: 'signal' },
} as const satisfies Readonly<Record<string, PracticeCable>>;

export type CableName = keyof typeof CABLES;
export const CABLE_NAMES = Object.keys(CABLES) as readonly CableName[];

/** Long runs by their length alone: what the work grows with. */
import type { Joint, Leg, Run, Support } from '../../src/run/types.ts';
import { ticks } from '../../src/trade/length.ts';

const FOOT = 12 * 8128;

/** Legs of 10 ft, an elbow between each two, a splice and two supports on each; a cable over all. */
export function stairs(feet: number): Run {
  const count = feet / 10;
  const legs: Leg[] = [];
  const joints: Joint[] = [];
  const supports: Support[] = [];
  for (let k = 0; k < count; k++) {
    const leg = `L${k}`;
    legs.push({
      id: leg,
      from: k === 0 ? 'start' : `L${k - 1}`,
      fitting: k === 0 ? null : 'card-4-elbow-90',
      dir: k % 2 === 0 ? 'N' : 'E',
      length: ticks(10 * FOOT),
    });
    joints.push({ leg, at: ticks(5 * FOOT), kind: 'socketed' });
    for (const at of [2, 8]) supports.push({ leg, at: ticks(at * FOOT), way: 'horizontal', hold: 'guide' });
  }
  return { v: 1, tray: 'card-4', start: { kind: 'free', joint: 'free' }, legs, joints, supports };
}

import type { Face } from '../run/straight.ts';
import type { Plan } from './plan.ts';

/** What the channel meets at a face, drawn beside it and not to scale. */
export function drawFace(
  plan: Plan,
  face: Face,
  x: number,
  way: -1 | 1,
  bar: number,
  high: number,
  pxPerTick = 0,
): void {
  const part = way < 0 ? 'start' : 'end';
  const between = (a: number, b: number) => ({ x: Math.min(a, b), w: Math.abs(a - b) });
  if (face.joint === 'socketed') {
    plan.rect(
      { ...between(x, x + way * 18), y: bar - 5, h: high + 10 },
      { pen: 'thin', fill: 'sheet', part },
    );
    plan.line('hidden', [x, bar + 4], [x + way * 10, bar + 4]);
    plan.line('hidden', [x, bar + high - 4], [x + way * 10, bar + high - 4]);
    plan.line('hidden', [x + way * 10, bar + 4], [x + way * 10, bar + high - 4]);
  } else if (face.joint === 'butt') {
    const box = { ...between(x + way * 1.5, x + way * 12), y: bar - 12, h: high + 24 };
    plan.hatch(box, 'up');
    plan.line('edge', [x + way * 1.5, box.y], [x + way * 1.5, box.y + box.h], part);
  }
  if (face.kind === 'instrument') {
    const r = 12;
    const centre = x + face.open * pxPerTick + r + (face.joint === 'free' ? 1.5 : 18);
    plan.circle([centre, bar + high / 2], r, { pen: 'thin', fill: 'sheet', part: 'instrument' });
    if (face.joint === 'free') plan.line('hidden', [x + 2, bar + high / 2], [centre - r, bar + high / 2]);
  }
}

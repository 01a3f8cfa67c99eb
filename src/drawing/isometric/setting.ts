/** What every label of an isometric is set with. */
import type { Speak } from '../../trade/say.ts';
import type { Plan } from '../plan.ts';
import type { Room } from '../room.ts';
import type { RunGiven } from '../runGiven.ts';
import type { Box, Point } from '../shapes.ts';
import type { Form } from '../types.ts';
import type { Place } from './paint.ts';
import type { Scene } from './scene.ts';
import type { Sizes } from './sizes.ts';

export interface Setting {
  readonly given: RunGiven;
  readonly scene: Scene;
  readonly plan: Plan;
  readonly room: Room;
  readonly place: Place;
  readonly sizes: Sizes;
  readonly form: Form;
  readonly speak: Speak;
}

export const middleOf = ({ x, y, w, h }: Box): Point => [x + w / 2, y + h / 2];

/** The ends of a round-ended box, for balloons with longer names. */
export function capsule({ x, y, w, h }: Box): readonly Point[] {
  const r = h / 2;
  const half = (cx: number, from: number): Point[] =>
    Array.from({ length: 9 }, (_, i) => {
      const turn = from + (Math.PI * i) / 8;
      return [cx + r * Math.cos(turn), y + r + r * Math.sin(turn)];
    });
  return [...half(x + w - r, -Math.PI / 2), ...half(x + r, Math.PI / 2)];
}

import { lengthOf, type SecondOpinion } from './told.ts';

/** Between a support and the quarter point of its span, not over a support: NEMA VE 2 (from memory). */
const work: SecondOpinion = (told) => {
  const [start, spacing] = [lengthOf(told, 'start'), lengthOf(told, 'spacing')];
  const supports = Array.from({ length: 20 }, (_, i) => start - spacing + i * spacing);
  const nearest = (splice: number) => Math.min(...supports.map((at) => Math.abs(at - splice)));
  const first = nearest(lengthOf(told, 'piece'));
  const second = nearest(lengthOf(told, 'piece') + lengthOf(told, 'stock'));
  const over = first === 0 || second === 0;
  return { first, second, holds: over ? 'over' : Math.max(first, second) > spacing / 4 ? 'far' : 'yes' };
};
export default work;

import { inchesOf, lengthOf, rowsOf, type SecondOpinion } from './told.ts';

/** 1/8 in on 4 ft, 1/4 in on 10 ft, both faces: common practice, no source; both are told. */
const work: SecondOpinion = (told) => {
  const face = (id: string) => {
    const [top = 0, four = 0, six = 0, ten = 0] = rowsOf(told, id).map(({ text }) => inchesOf(text));
    const lean = Math.abs(ten - top);
    const fours = Math.max(Math.abs(four - top), Math.abs(ten - six));
    return { lean, out: lean > lengthOf(told, 'on-ten') || fours > lengthOf(told, 'on-four') };
  };
  const [front, side] = [face('front'), face('side')];
  const stands = front.out ? (side.out ? 'both' : 'front') : side.out ? 'side' : 'yes';
  return { front: front.lean, side: side.lean, stands };
};
export default work;

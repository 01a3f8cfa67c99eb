/** Sizes of the tapped run, px. */

/** Along a leg: 32 px to the foot. */
export const PX_PER_INCH = 32 / 12;

/** Side of a target, and of the box drawn in it. */
export const TARGET = 48;
export const BOX = 40;

/** Least px between two measures of the column. */
export const MEASURE = 36;

/** Places across a leg's block, from its left edge. */
export interface Across {
  readonly width: number;
  readonly left: number;
  readonly channel: number;
  readonly wide: number;
  /** Half the length of a strut. */
  readonly strut: number;
  readonly right: number;
  /** Where the measures' line stands, and where their texts begin. */
  readonly line: number;
  readonly texts: number;
}

const phone: Across = {
  width: 294,
  left: 3,
  channel: 82,
  wide: 26,
  strut: 26,
  right: 113,
  line: 168,
  texts: 175,
};

const tiny: Across = {
  width: 270,
  left: 2,
  channel: 73,
  wide: 20,
  strut: 20,
  right: 97,
  line: 150,
  texts: 155,
};

export const acrossOf = (narrow: boolean): Across => (narrow ? tiny : phone);

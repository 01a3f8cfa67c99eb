/** Sentences of the bars of a cutting plan. */
export const stickSays = [
  'drawing.stick',
  'drawing.sticks',
  'drawing.remnant',
  'drawing.remnants',
  'drawing.barOf',
  'drawing.barLeft',
  'drawing.barLeftEach',
  'drawing.barWhole',
  'drawing.barsMore',
  'drawing.barsWords',
  'drawing.barWords',
  'drawing.barWordsEach',
  'drawing.barWordsWhole',
  'drawing.barWordsUncut',
  'drawing.barMarked',
  'drawing.barTimes',
] as const;

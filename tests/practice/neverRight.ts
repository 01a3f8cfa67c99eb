/**
 * Options that are right in no draw of their family, each with the reason why it stands there all the same. What is not
 * here has to be right now and then: else learners strike it out after a few draws, worst of all "ask the engineer".
 */
export interface NeverRight {
  readonly family: string;
  /** An ask, or `ask.part` of a job. */
  readonly ask: string;
  readonly options: readonly string[];
  readonly why: string;
}

/** Of a row of parts with the same options, those that this place never has. */
const JUMPERS = ['j2', 'j3', 'j4', 'j5', 'j6', 'j7'].map(
  (part): NeverRight => ({
    family: 'jumper-list',
    ask: `joints.${part}`,
    options: ['meets', 'every'],
    why: 'The options are those of every joint: between its ends a run meets no other tray, and a jumper at every joint is the mistake.',
  }),
);
const EVERY = ['j1', 'j8'].map(
  (part): NeverRight => ({
    family: 'jumper-list',
    ask: `joints.${part}`,
    options: ['every'],
    why: 'A jumper for the reason that it is a joint is the mistake itself: only what does not carry gets one.',
  }),
);

export const NEVER_RIGHT: readonly NeverRight[] = [
  ...JUMPERS,
  ...EVERY,
  {
    family: 'decimal-elevations',
    ask: 'unit',
    options: ['inches'],
    why: 'No drawing that gives its elevations with a point writes feet and inches so.',
  },
  {
    family: 'expansion-gap',
    ask: 'later',
    options: ['closed'],
    why: 'A gap guessed closed or open is the mistake: inside the range it is worked out, outside it is asked.',
  },
  {
    family: 'face-to-face',
    ask: 'ends',
    options: ['neither'],
    why: 'Between two faces that it butts against a piece is what the tape shows: there is nothing to work out.',
  },
  {
    family: 'fill-with-barrier',
    ask: 'next',
    options: ['no-barrier'],
    why: 'A barrier that is drawn is never taken out for room.',
  },
  {
    family: 'from-ladder-rail',
    ask: 'ends',
    options: ['first', 'neither'],
    why: 'The second end goes into a fitting in all of them; who leaves that out makes the mistake.',
  },
  {
    family: 'ground-path',
    ask: 'up-to',
    options: ['d1600'],
    why: 'The last row of the table: no channel that is drawn is marked with so much metal.',
  },
  {
    family: 'job-drop',
    ask: 'brackets.bears',
    options: ['all'],
    why: 'The drawing names the one that bears: a drop borne at two places hangs from neither as it was reckoned.',
  },
  {
    family: 'job-wall-run',
    ask: 'bonding.size',
    options: ['14-awg', '6-awg', '4-awg', '3-awg'],
    why: 'Rows of the table that no circuit of these runs reaches; a shorter list would give the row away.',
  },
  {
    family: 'jumper-size',
    ask: 'decides',
    options: ['sum', 'smallest'],
    why: 'The largest device decides, or the rule of the tray; the sum and the smallest are the mistakes.',
  },
  {
    family: 'jumper-size',
    ask: 'size',
    options: ['awg-14', 'awg-12', 'awg-10', 'awg-1-0', 'awg-2-0', 'awg-3-0', 'awg-4-0', 'awg-250-kcmil'],
    why: 'Rows of the table that wrong roads end in; a shorter list would give the row away.',
  },
  {
    family: 'longest-span',
    ask: 'span',
    options: ['ft-7', 'ft-9'],
    why: 'Spans between two rows: the table is never read between.',
  },
  {
    family: 'narrowest-channel',
    ask: 'first',
    options: ['w6'],
    why: 'A cable alone that needs the row for 6 in is thicker than the channels are deep: 6 in is where one ends who forgets that.',
  },
  {
    family: 'narrowest-channel',
    ask: 'second',
    options: ['none'],
    why: 'Its options are those of the first cable, where it is right; here a wrong road has to end at another width.',
  },
  {
    family: 'no-row',
    ask: 'speaks',
    options: ['scaled', 'half'],
    why: 'A width without a row is never made up from another row.',
  },
  {
    family: 'od-from-sheet',
    ask: 'column',
    options: ['core', 'conductor', 'wire', 'nominal'],
    why: 'What counts is the outermost diameter: these lie within it, or are a name.',
  },
  {
    family: 'one-more-cable',
    ask: 'next',
    options: ['after'],
    why: 'Laid first and told afterwards is the mistake, whatever the sum.',
  },
  {
    family: 'reference-points',
    ask: 'first-point',
    options: ['sleeve-middle', 'plate-edge', 'centre-line'],
    why: 'Places that a tape is never held to.',
  },
  {
    family: 'reference-points',
    ask: 'second-point',
    options: ['sleeve-middle', 'plate-edge', 'centre-line'],
    why: 'Places that a tape is never held to.',
  },
  {
    family: 'revision-and-kit',
    ask: 'next',
    options: ['newer', 'swap'],
    why: 'Work begun by the newer paper, or a kit changed without a word, is the mistake: every fault is reported.',
  },
  {
    family: 'short-piece',
    ask: 'what',
    options: ['spread', 'slide', 'borrow'],
    why: 'Three ways of hiding that a piece is short; none makes it good.',
  },
  {
    family: 'single-conductors',
    ask: 'against',
    options: ['outside', 'area'],
    why: 'The rule adds diameters and holds them against the inside width; area and outside width are the mistakes.',
  },
  {
    family: 'tape-sag',
    ask: 'verdict',
    options: ['off'],
    why: 'Sag that is worked out is never taken off and cut by: it is measured again.',
  },
  {
    family: 'tools-for-the-place',
    ask: 'blade',
    options: ['grinder'],
    why: 'A grinder throws sparks and burns the coating: never for channel.',
  },
  {
    family: 'tools-for-the-place',
    ask: 'tether',
    options: ['none'],
    why: 'Above people nothing is carried without a tether.',
  },
  {
    family: 'tools-for-the-place',
    ask: 'wrench',
    options: ['impact'],
    why: 'An impact driver tightens to no stated torque.',
  },
  {
    family: 'vertical-drop',
    ask: 'ends',
    options: ['second', 'neither'],
    why: 'The upper end goes into an elbow in all of them; who leaves that out makes the mistake.',
  },
  {
    family: 'waste-side',
    ask: 'side',
    options: ['on'],
    why: 'A blade never runs with its middle on the mark.',
  },
];

/** Line weights and dashes: thick to thin 2:1, px on a screen and the same lines in mm on paper (0.7 and 0.35). */
import type { Pen } from './shapes.ts';
import type { Form, Palette } from './types.ts';

interface Stroke {
  readonly screen: number;
  /** At 718 px to 190 mm one px is 0.2646 mm. */
  readonly paper: number;
  readonly dash?: string;
  readonly colour?: keyof Palette;
}

const THICK = 0.7 / 0.2646;
const THIN = 0.35 / 0.2646;

/**
 * Line conventions after ASME Y14.2-2008 para 2.1, 2.9 to 2.11 (visible, hidden, centre, dimension, cutting plane,
 * phantom; two widths 2:1); dashes in px are ours.
 */
const STROKES: Readonly<Record<Pen, Stroke>> = {
  edge: { screen: 2.5, paper: THICK },
  thin: { screen: 1.75, paper: THIN },
  hidden: { screen: 1.4, paper: THIN, dash: '7 3.5' },
  centre: { screen: 1.25, paper: THIN, dash: '20 3.5 3 3.5' },
  dimension: { screen: 1.25, paper: THIN },
  hatch: { screen: 1.25, paper: THIN },
  plane: { screen: 3.5, paper: THICK },
  planeBetween: { screen: 1.25, paper: THIN, dash: '12 3 3 3' },
  phantom: { screen: 1.25, paper: THIN, dash: '18 3.5 3 3.5 3 3.5' },
  mark: { screen: 2.5, paper: THICK, colour: 'mark' },
  frame: { screen: 2, paper: THICK },
  zone: { screen: 1.25, paper: THIN, colour: 'line' },
};

/** The attributes of a line. */
export function strokeOf(pen: Pen, form: Form, palette: Palette): string {
  const { screen, paper, dash, colour = 'ink' } = STROKES[pen];
  const width = form === 'paper' ? Math.round(paper * 100) / 100 : screen;
  return ` stroke="${palette[colour]}" stroke-width="${width}"${dash === undefined ? '' : ` stroke-dasharray="${dash}"`}`;
}

/** A drawing as it leaves this room, and what it takes to make one. */
import type { Speak } from '../trade/say.ts';

/** Where it will be read: redrawn for each, not shrunk. */
export const FORMS = ['phone', 'desk', 'paper'] as const;
export type Form = (typeof FORMS)[number];

export type View =
  | 'strip'
  | 'splice'
  | 'piece'
  | 'tape'
  | 'extract'
  | 'section'
  | 'sum'
  | 'tap'
  | 'sticks'
  | 'isometric'
  | 'bonding'
  | 'fitting'
  | 'expansion'
  | 'holes'
  | 'support'
  | 'exploded';

/** Colours and the lettering face, as presentation attributes take them: a hex, or `var(--ink)`. */
export interface Palette {
  readonly ink: string;
  readonly ink2: string;
  readonly line: string;
  readonly sheet: string;
  readonly mark: string;
  readonly galv: string;
  readonly galv2: string;
  readonly letter: string;
}

/** What every view is told besides its subject. */
export interface How {
  readonly form: Form;
  readonly palette: Palette;
  readonly speak: Speak;
}

/** A numbered balloon: the step's number, and the part it points at (each view lists its parts). */
export interface Balloon {
  readonly number: string;
  readonly at: string;
}

export interface Drawing {
  readonly view: View;
  readonly form: Form;
  readonly width: number;
  readonly height: number;
  /** A whole `<svg>`, presentation attributes only, its words as `aria-label`. */
  readonly svg: string;
  /** The measures, for someone who cannot see the lines. */
  readonly words: string;
  /** Zone of each balloon on this form, `{"1": "B2"}`. */
  readonly zones: Readonly<Record<string, string>>;
  /** Zone of each numbered triangle of a run's findings, where the view shows them. */
  readonly noted?: Readonly<Record<string, string>>;
}

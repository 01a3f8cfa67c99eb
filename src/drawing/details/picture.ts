/** The picture of parts apart, above their list. */
import type { Target } from '../balloon.ts';
import type { Form } from '../types.ts';

export interface Room {
  readonly form: Form;
  readonly width: number;
  readonly margin: number;
  /** Where the picture begins. */
  readonly top: number;
}

/** A picture of parts: what balloons point at, and where it ends. */
export interface Picture {
  readonly targets: Readonly<Record<string, Target>>;
  readonly bottom: number;
}

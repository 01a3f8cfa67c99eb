/** How the sheet of one place ends: its notes, the frame round them, the balloons that point at its parts. */
import { drawBalloons, type Target } from '../balloon.ts';
import { frameOf, MARGIN } from '../frame.ts';
import { drawNotes } from '../notes.ts';
import type { Plan } from '../plan.ts';
import type { Balloon, Form, View } from '../types.ts';
import type { Detail } from './detail.ts';
import { wrapped } from './wrapped.ts';

interface Ending {
  readonly view: View;
  readonly form: Form;
  readonly width: number;
  readonly notes: readonly string[];
  /** Of the first note, px from the sheet's upper edge. */
  readonly top: number;
  readonly balloons: readonly Balloon[];
  /** Parts that a balloon may point at. */
  readonly targets: Readonly<Record<string, Target>>;
  readonly words: string;
}

/** @throws {GivenError} a balloon at a part that the sheet does not show */
export function endSheet(plan: Plan, ending: Ending): Detail {
  const { view, form, width, notes, top, balloons, targets, words } = ending;
  const margin = MARGIN[form];
  const foot = drawNotes(plan, wrapped(notes, width, form), { form, width, margin, top });
  const height = Math.ceil(foot + margin);
  const frame = frameOf(form, width, height);
  const zones = drawBalloons(plan, frame, form, balloons, targets);
  return { view, width, height, frame, plan, zones, parts: Object.keys(targets), words };
}

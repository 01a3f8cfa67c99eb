import { stateMark } from '../../../drawing/marks.ts';
import { pagePalette } from '../../../drawing/palette.ts';
import { type StateKey, standingOf } from '../../states.ts';

/** The mark of a state; its word always stands with it. */
export function Mark({ state, text = '' }: { readonly state: StateKey; readonly text?: string }) {
  const drawn = stateMark(standingOf(state), text, pagePalette);
  // biome-ignore lint/security/noDangerouslySetInnerHtml: drawing/marks.ts escapes its text
  return <span className="mark" dangerouslySetInnerHTML={{ __html: drawn }} />;
}

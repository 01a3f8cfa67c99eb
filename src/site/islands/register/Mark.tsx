import { stateMark } from '../../pictures/stateMark.ts';
import type { StateKey } from '../../states.ts';

/** The mark of a state; its word always stands with it. */
export function Mark({ state, text = '' }: { readonly state: StateKey; readonly text?: string }) {
  // biome-ignore lint/security/noDangerouslySetInnerHtml: pictures/stateMark.ts escapes its text
  return <span className="mark" dangerouslySetInnerHTML={{ __html: stateMark(state, text) }} />;
}

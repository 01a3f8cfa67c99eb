import { buttonArrow } from '../../drawing/signs.ts';

const drawn = { __html: buttonArrow() };

/** The dimension arrow at the right of a button. */
export function Arrow() {
  // biome-ignore lint/security/noDangerouslySetInnerHtml: a drawing of ours without any text
  return <span className="arrow" dangerouslySetInnerHTML={drawn} />;
}

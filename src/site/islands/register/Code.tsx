import type { Tell } from '../../speak.ts';
import { useDrawer } from './useCodes.ts';

interface Props {
  readonly text: string;
  /** What the code is of, for whoever does not see it. */
  readonly label: string;
  readonly tell: Tell;
}

/** A text as a code to be photographed: black on white in any look. */
export function Code({ text, label, tell }: Props) {
  const drawing = useDrawer();
  if (drawing === null) return null;
  const svg = drawing.codeSvg(text);
  if (svg === undefined) return <p className="note">{tell('handing.codeLong')}</p>;
  // biome-ignore lint/security/noDangerouslySetInnerHtml: drawn of squares; no text of anybody's stands in it
  return <div className="code" role="img" aria-label={label} dangerouslySetInnerHTML={{ __html: svg }} />;
}

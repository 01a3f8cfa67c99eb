import { pagePalette } from '../../drawing/palette.ts';
import { drawTape } from '../../drawing/tape.ts';
import type { Ticks } from '../../trade/length.ts';
import type { Speak } from '../speak.ts';

/** The tape at a reading: the inch it falls in, the mark on it. One form serves every width. */
export function Tape({ reading, speak }: { reading: Ticks; speak: Speak }) {
  const { svg } = drawTape({ reading, printed: true }, { form: 'phone', palette: pagePalette, speak });
  // biome-ignore lint/security/noDangerouslySetInnerHtml: src/drawing escapes every text; it is no reader's input
  return <div className="tape" dangerouslySetInnerHTML={{ __html: svg }} />;
}

/** A dimension in a revision cloud, as a drawing office draws round what is to be looked at again. */
import { cloudPath } from './cloudPath.ts';
import { textWidth } from './glyphs.ts';
import { whole } from './signs.ts';
import { escapeXml } from './svg.ts';
import type { Palette } from './types.ts';

const n = (v: number) => String(Math.round(v * 100) / 100);

/** A dimension to rework, or near: in a revision cloud, its words the dimension itself. */
export function cloudedDimension(text: string, palette: Palette): string {
  const [edge, size, height] = [7, 17, 40];
  const width = Math.round(textWidth(text, size) + 44);
  const path = cloudPath(edge, edge, width - 2 * edge, height - 2 * edge);
  return whole(
    width,
    height,
    `role="img" aria-label="${escapeXml(text)}"`,
    `<path d="${path}" fill="${palette.sheet}" stroke="${palette.mark}" stroke-width="2.5" stroke-linejoin="round"/><text x="${n(width / 2)}" y="26" text-anchor="middle" font-family="${escapeXml(palette.letter)}" font-size="${size}" fill="${palette.ink}">${escapeXml(text)}</text>`,
  );
}

/** A dimension in a revision cloud, as a drawing office draws round what is to be looked at again. */
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

/** A revision cloud round a box: arcs bulging outwards by less than 6 px, about 15 px each, two a side at least. */
export function cloudPath(x: number, y: number, w: number, h: number): string {
  const bump = 15.3;
  const [across, down] = [Math.max(2, Math.round(w / bump)), Math.max(2, Math.round(h / bump))];
  const [dx, dy] = [w / across, h / down];
  const arc = (ex: number, ey: number) => {
    const r = Math.max(Math.abs(ex), Math.abs(ey)) * 0.56;
    return `a${n(r)} ${n(r)} 0 0 1 ${n(ex)} ${n(ey)}`;
  };
  return `M${n(x)} ${n(y)}${arc(dx, 0).repeat(across)}${arc(0, dy).repeat(down)}${arc(-dx, 0).repeat(across)}${arc(0, -dy).repeat(down)}Z`;
}

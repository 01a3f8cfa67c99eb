/** A rework cloud around a short measure, as a drawing office draws it, and the numbered triangle that points to its note. */
import { escaped, picture } from './line.ts';

const bump = 9;

/** Arcs along one side, bulging outwards (left of the direction of travel). */
function side(dx: number, dy: number, length: number): string {
  const count = Math.max(2, Math.round(length / (bump * 1.7)));
  const step = length / count;
  return Array.from(
    { length: count },
    () => `a${bump * 0.62} ${bump * 0.62} 0 0 1 ${(dx * step).toFixed(2)} ${(dy * step).toFixed(2)}`,
  ).join('');
}

/** Cloud with its measure in it; the words are the measure itself. */
export function cloud(text: string): string {
  const width = Math.round(text.length * 9.6 + 44);
  const height = 40;
  const m = 7;
  const [w, h] = [width - 2 * m, height - 2 * m];
  const path = `M${m} ${m}${side(1, 0, w)}${side(0, 1, h)}${side(-1, 0, w)}${side(0, -1, h)}Z`;
  return picture(
    width,
    height,
    `<path d="${path}" fill="var(--sheet)" stroke="var(--mark)" stroke-width="2.5" stroke-linejoin="round"/>` +
      `<text x="${width / 2}" y="26" font-size="17" text-anchor="middle" fill="var(--ink)">${escaped(text)}</text>`,
    text,
  );
}

/** Triangle with a number: look again, the note says why. */
export const triangle = (number: number): string =>
  picture(
    40,
    36,
    '<path d="M20 1.4L38 33H2Z" fill="var(--sheet)" stroke="var(--mark)" stroke-width="2.5"/>' +
      `<text x="20" y="28.7" font-size="18" font-weight="750" text-anchor="middle" fill="var(--mark)">${number}</text>`,
  );

/** The four marks of how a person stands: 40 by 28, only line and fill differ, so they copy well in black and white. */
import type { StateKey } from '../states.ts';

/** 45° lines inside the box, sparse. */
const hatch = 'M1.5 12.5L12.5 1.5M1.5 22.5L22.5 1.5M7.5 26.5L32.5 1.5M17.5 26.5L38.5 5.5M27.5 26.5L38.5 15.5';

const drawn: Readonly<Record<StateKey, (text: string) => string>> = {
  shown: (text) =>
    `<rect x="0" y="0" width="40" height="28" fill="var(--ink)"/>${lettering(text, 20, 19.5, 'var(--sheet)', text.length > 2 ? 12 : 15)}`,
  'show-again': (text) =>
    `<path d="M20 2L38.2 26.5H1.8Z" fill="var(--sheet)" stroke="var(--ink)" stroke-width="2.2"/>${lettering(text, 20, 23.8, 'var(--ink)', 14)}`,
  'practice-only': () =>
    `<rect x="1.5" y="1.5" width="37" height="25" fill="var(--sheet)" stroke="var(--ink)" stroke-width="1.4"/><path d="${hatch}" stroke="var(--ink)" stroke-width="1.4" fill="none"/>`,
  'not-shown': () =>
    '<rect x="1.5" y="1.5" width="37" height="25" fill="none" stroke="var(--line)" stroke-width="1.6" stroke-dasharray="5 3.5"/>',
};

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

function lettering(text: string, x: number, y: number, colour: string, size: number): string {
  return `<text x="${x}" y="${y}" text-anchor="middle" font-size="${size}" font-weight="750" fill="${colour}">${escaped(text)}</text>`;
}

/** @param text  the witness's initials, or the reason's sign: a revision's number, T, W, N, ? */
export const stateMark = (state: StateKey, text: string): string =>
  `<svg class="state-mark" viewBox="0 0 40 28" width="40" height="28" aria-hidden="true" focusable="false">${drawn[state](text)}</svg>`;

/**
 * Advance widths of the lettering face, in thousandths of its size, so that a text's room is known without a page.
 * Measured from National Park (variable, weight 650) in a browser, up to the next 10. A character not listed counts as 0.6.
 */
const WIDTHS: readonly (readonly [chars: string, width: number])[] = [
  ["'", 210],
  ['`ilí', 270],
  [' !.:j¡', 280],
  [',IÍ', 290],
  ['·', 310],
  [';', 330],
  ['[]', 350],
  ['°', 360],
  ['"f', 380],
  ['r³', 400],
  ['()', 410],
  ['t²', 420],
  ['-/\\', 430],
  ['^', 460],
  ['*', 470],
  ['?sz¿', 500],
  ['x', 510],
  ['1Jv', 520],
  ['c×', 530],
  ['FL', 540],
  ['ky§', 550],
  ['7Y_eé÷', 560],
  ['+aá', 570],
  ['EoÉó', 580],
  ['$235<=>STZ±', 590],
  ['Phnuñúü–', 600],
  ['VXbdgpq', 610],
  ['689AÁ', 620],
  ['CK', 630],
  ['4B', 640],
  ['#R', 660],
  ['0D', 670],
  ['G', 680],
  ['NÑ', 690],
  ['HUÚ', 700],
  ['&', 710],
  ['OÓ', 720],
  ['Q', 750],
  ['w…', 760],
  ['%W', 830],
  ['M', 860],
  ['m', 920],
  ['½', 950],
  ['@', 960],
  ['¼—', 980],
  ['¾', 1010],
];

const widthOf = new Map(WIDTHS.flatMap(([chars, width]) => [...chars].map((c) => [c, width] as const)));

/** As much of a text as a line holds, its rest an ellipsis. */
export function fitText(text: string, size: number, room: number): string {
  if (textWidth(text, size) <= room) return text;
  let kept = [...text];
  while (kept.length > 1 && textWidth(`${kept.join('')}…`, size) > room) kept = kept.slice(0, -1);
  return `${kept.join('').trimEnd()}…`;
}

/** Room that a text takes along its line, px; a little on the wide side. */
export function textWidth(text: string, size: number): number {
  let sum = 0;
  for (const c of text) sum += widthOf.get(c) ?? 600;
  return (sum * size) / 1000;
}

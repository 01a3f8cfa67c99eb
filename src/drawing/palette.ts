import type { Palette } from './types.ts';

/** Black on white, the lettering face by name: for paper, files and the command. */
export const paperPalette: Palette = {
  ink: '#000000',
  ink2: '#000000',
  line: '#000000',
  sheet: '#ffffff',
  mark: '#000000',
  galv: '#ffffff',
  galv2: '#ffffff',
  letter: "'National Park', 'DejaVu Sans Condensed', sans-serif",
};

/** The page's own tokens, so that a drawing turns dark with its page. */
export const pagePalette: Palette = {
  ink: 'var(--ink)',
  ink2: 'var(--ink2)',
  line: 'var(--line)',
  sheet: 'var(--sheet)',
  mark: 'var(--mark)',
  galv: 'var(--galv)',
  galv2: 'var(--galv2)',
  letter: 'var(--letter)',
};

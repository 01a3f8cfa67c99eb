import { useMemo } from 'react';
import { pagePalette } from '../../../drawing/palette.ts';
import type { Draw } from '../../../practice/draw.ts';
import type { World } from '../../../practice/model.ts';
import { figuresOf } from '../../../practice/show.ts';
import type { Language } from '../../../practice/words.ts';
import { Figure } from '../Figure.tsx';

interface Props {
  readonly draw: Draw;
  readonly world: World;
  readonly language: Language;
  /** The phone's form everywhere: where a figure is an example beside words. */
  readonly small?: boolean;
}

/** The figures of a draw, in the forms of the page. */
export function DrawFigures({ draw, world, language, small = false }: Props) {
  const figures = useMemo(() => {
    const [phone = [], desk = []] = (['phone', 'desk'] as const).map((form) =>
      figuresOf(draw, world, language, { form, palette: pagePalette }),
    );
    return phone.map((one, k) => ({ one, other: desk[k] }));
  }, [draw, world, language]);
  return figures.map(({ one, other }) =>
    small ? (
      // biome-ignore lint/security/noDangerouslySetInnerHtml: src/drawing escapes every text; it is no reader's input
      <div className="figure small" key={one.words} dangerouslySetInnerHTML={{ __html: one.svg }} />
    ) : (
      <Figure key={one.words} drawings={other === undefined ? [one] : [one, other]} />
    ),
  );
}

/** What draws.test.ts runs in a page: the practice room, with the content that Node read handed over as text. */
import { paperPalette } from '../../src/drawing/palette.ts';
import { drawOf } from '../../src/practice/draw.ts';
import type { Family } from '../../src/practice/family.ts';
import { keyOf } from '../../src/practice/key.ts';
import type { WorldData } from '../../src/practice/model.ts';
import { models } from '../../src/practice/models/index.ts';
import { showDraw } from '../../src/practice/show.ts';
import { speakerOver } from '../../src/trade/say.ts';

export interface Handed {
  readonly families: ReadonlyMap<string, Family>;
  readonly world: WorldData;
  /** By group and key, `group.key`. */
  readonly words: ReadonlyMap<string, string>;
}

const MAP = '__map';

/** Content as text; a map is written as its entries. */
export const handOver = (handed: Handed): string =>
  JSON.stringify(handed, (_, value: unknown) => (value instanceof Map ? { [MAP]: [...value] } : value));

const received = (text: string): Handed =>
  JSON.parse(text, (_, value: unknown) =>
    typeof value === 'object' && value !== null && MAP in value
      ? new Map(value[MAP] as [unknown, unknown][])
      : value,
  ) as Handed;

/** `practice draw` and `practice key` of each seed of a family, in English, as text. */
export function drawsOf(text: string): (family: string, seeds: readonly string[]) => readonly string[] {
  const { families, world: data, words } = received(text);
  const world = { ...data, models };
  const language = { lang: 'en', speak: speakerOver((key) => words.get(key)) };
  return (id, seeds) => {
    const family = families.get(id);
    if (family === undefined) throw new Error(`no family ${id}`);
    return seeds.map((seed) => {
      const draw = drawOf(family, seed, world);
      const shown = showDraw(draw, world, language, { form: 'desk', palette: paperPalette });
      return JSON.stringify({ ...shown, key: keyOf(draw, world, language) });
    });
  };
}

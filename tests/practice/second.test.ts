/** A second opinion on every family: programs that share no code with src/ work draws from what the learner is told. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

import { drawOf, modelOf } from '../../src/practice/draw.ts';
import { showDraw } from '../../src/practice/show.ts';
import type { SecondOpinion } from '../references/second/told.ts';
import { families, family, grade, how, language, world } from './means.ts';

const folder = new URL('../references/second/', import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith('.ts') && name !== 'told.ts');

test('every family has one, and it shares no code with src/', () => {
  expect(files.map((name) => name.replace('.ts', '')).sort()).toEqual([...families.keys()].sort());
  for (const name of [...files, 'told.ts'])
    for (const [, from = ''] of readFileSync(new URL(name, folder), 'utf8').matchAll(
      /^(?:import|export|\}).* from '([^']+)';$/gm,
    ))
      expect(['./told.ts'], `${name} imports ${from}`).toContain(from);
});

/** Seeds that the proofs do not use. A run that is laid out takes longer. */
const seedsOf = (id: string) =>
  Array.from({ length: modelOf(family(id), world).laidOut === true ? 10 : 40 }, (_, n) => `second-${n}`);

describe('works the same answers from what is told', () => {
  test.each(files.map((name) => name.replace('.ts', '')))('%s', async (id) => {
    const { default: work } = (await import(`../references/second/${id}.ts`)) as { default: SecondOpinion };
    for (const seed of seedsOf(id)) {
      const drawn = drawOf(family(id), seed, world);
      // Only what a learner has: the drawings go, their words stay.
      const { figures, ...told } = JSON.parse(JSON.stringify(showDraw(drawn, world, language, how)));
      const words = figures.map((figure: { words: string }) => ({ words: figure.words }));
      const answers = work({ ...told, figures: words });
      const open = grade(drawn, answers).findings.filter(({ verdict }) => verdict !== 'holds');
      expect(open, `${id}, seed ${seed}: ${JSON.stringify(answers)}`).toEqual([]);
    }
  });
});

/** Proofs read sentences: each file of words that a draw, its working or a verdict takes one from makes them stale. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { drawOf } from '../../src/practice/draw.ts';
import { gradeDraw } from '../../src/practice/grade.ts';
import { keyOf } from '../../src/practice/key.ts';
import { touchesProofs } from '../../src/practice/proofs.ts';
import { showDraw } from '../../src/practice/show.ts';
import type { Speak } from '../../src/trade/say.ts';
import { families, how, language, world } from './means.ts';

const FOLDER = 'content/words/en';

test('every file of words that proofs read is hashed with them', () => {
  const said = new Set<string>();
  const speak: Speak = (say) => {
    said.add(say.say.slice(0, say.say.indexOf('.')));
    return language.speak(say);
  };
  const listening = { ...language, speak };
  for (const family of families.values()) {
    const draw = drawOf(family, '1', world);
    showDraw(draw, world, listening, how);
    keyOf(draw, world, listening);
    for (const { ask, answer } of draw.wrong)
      gradeDraw(draw, { ...draw.right, [ask]: answer }, world, listening);
  }
  const groupsOf = (file: string) => Object.keys(JSON.parse(readFileSync(`${FOLDER}/${file}`, 'utf8')));
  const read = readdirSync(FOLDER).filter((file) => groupsOf(file).some((group) => said.has(group)));
  expect(read.length).toBeGreaterThan(10);
  expect(read.filter((file) => !touchesProofs(`${FOLDER}/${file}`))).toEqual([]);
});

/**
 * `npm run bench -- practice`: draws and grades a second, by family, and how much slower the slowest is than the middle
 * one. A draw is made with its right and wrong answers, without figures; a grade is of the right answers.
 */
import { drawOf } from '../../src/practice/draw.ts';
import { gradeDraw } from '../../src/practice/grade.ts';
import { showDraw } from '../../src/practice/show.ts';
import { families, how, language, world } from '../practice/means.ts';
import { compare } from './ratio.ts';

const DRAWS = 60;

/** Milliseconds that one call takes, on average over all seeds. */
function each(work: (seed: string) => unknown): number {
  work('warm');
  const begin = performance.now();
  for (let seed = 1; seed <= DRAWS; seed++) work(String(seed));
  return (performance.now() - begin) / DRAWS;
}

const rows = [...families.values()].map((family) => {
  const drawn = Array.from({ length: DRAWS + 1 }, (_, n) =>
    drawOf(family, n === 0 ? 'warm' : String(n), world),
  );
  const at = (seed: string) => drawn[seed === 'warm' ? 0 : Number(seed)] as (typeof drawn)[number];
  return {
    id: family.id,
    draw: each((seed) => drawOf(family, seed, world)),
    grade: each((seed) => gradeDraw(at(seed), at(seed).right, world, language)),
    show: each((seed) => showDraw(at(seed), world, language, how)),
  };
});

const per = (ms: number) => `${Math.round(1000 / ms).toLocaleString('en')}/s`;
for (const { id, draw, grade, show } of [...rows].sort((a, b) => b.draw - a.draw))
  console.log(`${id}: ${per(draw)} draws, ${per(grade)} grades, ${per(show)} shown with figures`);

const middle = (of: 'draw' | 'grade') =>
  [...rows].map((row) => row[of]).sort((a, b) => a - b)[rows.length >> 1] ?? 0;
const slowest = [...rows].sort((a, b) => b.draw - a.draw)[0];
console.log(
  `${rows.length} families: the middle one makes ${per(middle('draw'))} draws and ${per(middle('grade'))} grades`,
);
const first = [...families.values()].find(({ id }) => id === slowest?.id);
const base = families.get('cut-with-insertion');
if (first !== undefined && base !== undefined) {
  let seed = 0;
  const twenty = (family: typeof first) => () => {
    for (let n = 0; n < 20; n++) drawOf(family, String(seed++), world);
  };
  await compare([
    {
      what: `20 draws of ${first.id}, the slowest`,
      baseline: '20 of cut-with-insertion',
      work: twenty(first),
      against: twenty(base),
    },
  ]);
}

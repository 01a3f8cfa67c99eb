/**
 * `npm run bench`, `npm run bench -- SUBJECT`: how long the work takes, each as a ratio against a baseline measured in
 * the same run. SUBJECT is a file beside this one. Not part of `npm test`: a time is no verdict.
 */
import { readdirSync } from 'node:fs';

const subjects = readdirSync(new URL('.', import.meta.url))
  .filter((name) => name.endsWith('.ts') && !['bench.ts', 'ratio.ts'].includes(name))
  .map((name) => name.slice(0, -3));
const subject = process.argv[2] ?? 'whole';

if (subjects.includes(subject)) await import(`./${subject}.ts`);
else {
  console.error(`no bench of that name: ${subject}; there are ${subjects.join(' ')}`);
  process.exitCode = 2;
}

/**
 * `npm test`: every check of the project, in three stages. What does not need the built site runs side by side
 * first; then the site is built from nothing; then a real browser walks it. Ends with the true counts.
 */
import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

interface Check {
  readonly name: string;
  /** The script of a package in node_modules, or one of ours, run by this very Node. */
  readonly script: string;
  readonly args: readonly string[];
  /** Where a test runner writes its counts; a check without it counts as one. */
  readonly counts?: string;
}

interface Outcome {
  readonly passed: number;
  readonly failed: number;
}

const scratch = mkdtempSync(join(tmpdir(), 'trayhand-check-'));

/** @param project  of vitest.config.ts */
function tests(project: 'unit' | 'browser'): Check {
  const counts = join(scratch, `${project}.json`);
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${counts}`];
  return {
    name: project,
    script: 'node_modules/vitest/vitest.mjs',
    args: ['run', '--config', 'src/setup/vitest.config.ts', '--project', project, ...reporters],
    counts,
  };
}

const stages: readonly (readonly Check[])[] = [
  [
    {
      name: 'types',
      script: 'node_modules/astro/bin/astro.mjs',
      args: ['check', '--minimumFailingSeverity', 'warning'],
    },
    {
      name: 'lint',
      script: 'node_modules/@biomejs/biome/bin/biome',
      args: ['check', '--error-on-warnings', '.'],
    },
    {
      name: 'imports',
      script: 'node_modules/dependency-cruiser/bin/dependency-cruiser.mjs',
      args: ['src', '--config', 'src/setup/dependency-cruiser.cjs', '--output-type', 'err'],
    },
    { name: 'content', script: 'src/cli/bin.ts', args: ['content', 'check'] },
  ],
  [tests('unit')],
  [{ name: 'build', script: 'node_modules/astro/bin/astro.mjs', args: ['build', '--force'] }],
  [tests('browser')],
];

/** Counts of a test run; a run that wrote none (it could not start) is one failure. */
function countsOf(check: Check, good: boolean): Outcome {
  if (check.counts === undefined) return good ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };
  try {
    const { numPassedTests, numFailedTests } = JSON.parse(readFileSync(check.counts, 'utf8'));
    return { passed: numPassedTests, failed: good ? numFailedTests : Math.max(1, numFailedTests) };
  } catch {
    return { passed: 0, failed: 1 };
  }
}

function run(check: Check): Promise<Outcome> {
  return new Promise((done) => {
    const began = performance.now();
    let talk = '';
    const child = spawn(process.execPath, [check.script, ...check.args], {
      env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', FORCE_COLOR: '0', NO_COLOR: '1' },
    });
    const hear = (text: string) => {
      talk += text;
    };
    child.stdout.setEncoding('utf8').on('data', hear);
    child.stderr.setEncoding('utf8').on('data', hear);
    child.on('close', (code) => {
      const good = code === 0;
      const seconds = ((performance.now() - began) / 1000).toFixed(1);
      const outcome = countsOf(check, good);
      const tally = check.counts === undefined ? '' : `, ${outcome.passed} passed, ${outcome.failed} failed`;
      console.log(`${good ? 'ok  ' : 'FAIL'} ${check.name} (${seconds} s${tally})`);
      if (!good) console.log(talk);
      done(outcome);
    });
  });
}

let passed = 0;
let failed = 0;
for (const stage of stages) {
  for (const outcome of await Promise.all(stage.map(run))) {
    passed += outcome.passed;
    failed += outcome.failed;
  }
}
rmSync(scratch, { recursive: true, force: true });
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;

/** A copy of the project in which a site has adopted values of its own: for what the demo works never asks for. */
import { execFile } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { promisify } from 'node:util';

const run = promisify(execFile);
const parts = ['src', 'content', 'public', 'astro.config.mjs', 'package.json', 'tsconfig.json'];

export interface Adopted {
  readonly folder: string;
  /** The command of the copy. @returns what it printed and how it ended */
  command(...args: readonly string[]): Promise<{ readonly code: number; readonly out: string }>;
  /** Builds the copy's site. @returns the folder of the pages */
  build(): Promise<string>;
  remove(): void;
}

/** @param values rows of `values` of the paper, as YAML */
export function adoptedProject(values: readonly string[]): Adopted {
  const folder = mkdtempSync(join(tmpdir(), 'trayhand-adopted-'));
  for (const part of parts) cpSync(part, join(folder, part), { recursive: true });
  symlinkSync(resolve('node_modules'), join(folder, 'node_modules'));
  const paper = [
    'id: witness-rule',
    'document: Rule for witnesses, revision 1',
    'by: A. Reyes, supervisor of the site',
    'on: "2026-01-05"',
    'values:',
    ...values.map((row) => `  - ${row}`),
  ];
  writeFileSync(join(folder, 'content/site/witness-rule.yaml'), `${paper.join('\n')}\n`);
  return {
    folder,
    command: async (...args) => {
      try {
        const { stdout } = await run(process.execPath, [join(folder, 'src/cli/bin.ts'), ...args]);
        return { code: 0, out: stdout };
      } catch (cause) {
        const { code, stdout, stderr } = cause as { code: number; stdout: string; stderr: string };
        return { code, out: stdout + stderr };
      }
    },
    build: async () => {
      const env = { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', NODE_ENV: 'production' };
      await run(process.execPath, ['node_modules/astro/bin/astro.mjs', 'build', '--force'], {
        cwd: folder,
        env,
        maxBuffer: 1 << 26,
      });
      return join(folder, 'dist');
    },
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}

import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { group } from '../../src/cli/calc.ts';
import { convertInput, cutInput, fillInput, markInput } from '../../src/schema/calcInputs.ts';
import { arcInput, mitreInput, notchInput, offsetInput } from '../../src/schema/geometryInputs.ts';
import {
  beamInput,
  equivalentInput,
  sectionInput,
  spanInput,
  verticalInput,
} from '../../src/schema/mechanicsInputs.ts';
import { sticksInput } from '../../src/schema/sticksInputs.ts';
import {
  ampacityInput,
  expansionInput,
  groundpathInput,
  jumperInput,
  markingInput,
  radiusInput,
  separationInput,
  transitionInput,
} from '../../src/schema/tablesInputs.ts';
import { tryLength } from '../../src/trade/length.ts';

const manual = readFileSync(new URL('../../src/cli/README.md', import.meta.url), 'utf8');
/** The table row of a verb. */
const rowOf = (verb: string) => manual.split('\n').find((line) => line.startsWith(`| \`${verb}\``)) ?? '';
const inputs = {
  length: convertInput,
  cut: cutInput,
  mark: markInput,
  fill: fillInput,
  sticks: sticksInput,
  section: sectionInput,
  beam: beamInput,
  span: spanInput,
  equivalent: equivalentInput,
  vertical: verticalInput,
  offset: offsetInput,
  mitre: mitreInput,
  notch: notchInput,
  arc: arcInput,
  jumper: jumperInput,
  groundpath: groundpathInput,
  expansion: expansionInput,
  radius: radiusInput,
  transition: transitionInput,
  ampacity: ampacityInput,
  marking: markingInput,
  separation: separationInput,
};

describe('the manual in src/cli/README.md', () => {
  test('has a row for every verb of calc, and no other', () => {
    const part = manual.slice(manual.indexOf('\n## calc') + 1).split('\n## ')[0] ?? '';
    const rows = [...part.matchAll(/^\| `(\w+)` \|/gm)].map((m) => m[1]);
    expect(rows).toEqual(group.verbs.map((v) => v.name));
  });

  test.each(Object.entries(inputs))('%s: names every field that the command takes', (verb, { shape }) => {
    for (const field of Object.keys(shape))
      expect(rowOf(verb)).toMatch(new RegExp(`\`(?:[^\`]* )?${field}\\b`));
  });

  test('every length it shows as read is read, every one it shows as refused is refused', () => {
    const part = manual.slice(manual.indexOf('\n## Lengths'), manual.indexOf('\n## calc'));
    const texts = (line: string) => [...line.matchAll(/`([^`]+)`/g)].map((m) => m[1] ?? '');
    const [table = '', ...rest] = part
      .split('\n\n')
      .filter((p) => p.includes('| written |') || p.startsWith('Beside'));
    const read = table
      .split('\n')
      .slice(2)
      .flatMap((row) => texts(row.split(' | ')[0] ?? ''));
    const refused = texts(
      /is refused, and `todo` says what to write: (.*?)\. A length/.exec(rest.join())?.[1] ?? '',
    );
    expect(read.length).toBeGreaterThan(20);
    expect(read.filter((text) => typeof tryLength(text) !== 'number')).toEqual([]);
    const offered = [`5'-2"`, `4'-0 1/2"`];
    expect(refused.filter((text) => typeof tryLength(text) === 'number')).toEqual(offered);
  });
});

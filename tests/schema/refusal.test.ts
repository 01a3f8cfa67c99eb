import { expect, test } from 'vitest';
import { refuseFaults } from '../../src/schema/refusal.ts';

const faults = [
  {
    file: 'content/tasks/T05.yaml',
    field: 'months',
    value: 'twelve',
    message: 'not a number',
    todo: 'write 12',
  },
  { file: 'content/sheets/a.yaml', field: '', message: 'there is no such sheet', todo: 'take it out' },
];

test('content that holds is not refused', () => {
  expect(() => refuseFaults([])).not.toThrow();
});

test('every fault stands in the refusal: file, field, value, what is wrong, what to do', () => {
  expect(() => refuseFaults(faults)).toThrow(
    [
      'content: 2 to mend',
      'content/tasks/T05.yaml',
      '  months: "twelve": not a number',
      '  write 12',
      'content/sheets/a.yaml: there is no such sheet',
      '  take it out',
    ].join('\n'),
  );
});

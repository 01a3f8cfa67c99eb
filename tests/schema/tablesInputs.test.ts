/** What an input asks for, the tables of the content ask for too. */
import { expect, test } from 'vitest';
import { radiusInput } from '../../src/schema/tablesInputs.ts';
import { goesByConductor, RADIUS_CABLES } from '../../src/trade/radius.ts';
import { tables } from '../trade/tables.ts';

test.each(RADIUS_CABLES)(
  '%s: the input asks for the conductor where the rule knows nothing without it',
  (cable) => {
    expect(radiusInput.safeParse({ cable, odIn: 1 }).success).toBe(!goesByConductor(tables.radius[cable]));
  },
);

// NFPA 70, 330.24(C): the greater of 12 times one conductor and 7 times the cable.
test('which is MC with conductors each shielded', () => {
  expect(RADIUS_CABLES.filter((cable) => goesByConductor(tables.radius[cable]))).toEqual(['MC shielded']);
});

import { expect, test } from 'vitest';
import * as sources from '../../src/run/sources.ts';
import { cite } from '../../src/schema/source.ts';
import { EDITIONS } from '../../src/trade/editions.ts';
import { library } from './tables.ts';

const constants = Object.values(sources).flatMap((s) => (typeof s === 'object' ? [s] : []));
const code = EDITIONS.flatMap((edition) =>
  ['392.30(A)', '300.8', '336.24', '392.30(B)(3)'].map((where) => sources.nfpa(where, edition)),
);

test.each([...constants, ...code])(
  '$where ($edition) stands in content/sources as a run cites it',
  (source) => {
    expect(cite(source, source.edition, library.sources)).toEqual(source);
  },
);

/**
 * Properties draw the same cases every time, so that a clean clone tells of the code and not of chance. Other cases:
 * `PROPERTY_SEED=random` (or a number) before the call; a counterexample found that way becomes a test of its own.
 */
import { configureGlobal, readConfigureGlobal } from 'fast-check';

const { PROPERTY_SEED: asked = '20261125' } = process.env;
configureGlobal({
  ...readConfigureGlobal(),
  ...(asked === 'random' ? {} : { seed: Number.parseInt(asked, 10) }),
});

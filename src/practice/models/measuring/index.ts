import { cutWithInsertion } from './cutWithInsertion.ts';
import { readFeetInch } from './readFeetInch.ts';

/** Reading, measuring, working out lengths. */
export const measuring = { 'cut-with-insertion': cutWithInsertion, 'read-feet-inch': readFeetInch };

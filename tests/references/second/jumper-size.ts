import { given, numberIn, rowsOf, type SecondOpinion } from './told.ts';

/** NEC 2023, table 250.122 and 250.102(D), as the learner is shown them. */
const work: SecondOpinion = (told) => {
  const largest = rowsOf(told, 'device').reduce((most, { text }) => Math.max(most, numberIn(text)), 0);
  const row = rowsOf(told, 'table').find(
    ({ label }) => largest <= numberIn(/to (\d+) A/.exec(label)?.[1] ?? ''),
  );
  const size = new RegExp(`${given(told, 'metal').text} ([^,]+)`).exec(row?.text ?? '')?.[1];
  const options = told.asks.find(({ id }) => id === 'size')?.options ?? [];
  const option = options.find(({ text }) => text === size) ?? options.find(({ id }) => id === 'ask');
  return { decides: 'largest', size: option?.id };
};
export default work;

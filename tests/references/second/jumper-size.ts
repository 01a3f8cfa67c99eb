import { given, numberIn, rowsOf, type SecondOpinion } from './told.ts';

/** NEC 2023, table 250.122, 250.102(D), 250.122(C) and 392.10(B)(1)(c), as the learner is shown them. */
const work: SecondOpinion = (told) => {
  const largest = rowsOf(told, 'device').reduce((most, { text }) => Math.max(most, numberIn(text)), 0);
  const row = rowsOf(told, 'table').find(
    ({ label }) => largest <= numberIn(/to (\d+) A/.exec(label)?.[1] ?? ''),
  );
  const size = new RegExp(`${given(told, 'metal').text} ([^,]+)`).exec(row?.text ?? '')?.[1];
  const options = told.asks.find(({ id }) => id === 'size')?.options ?? [];
  const option = options.find(({ text }) => text === size) ?? options.find(({ id }) => id === 'ask');
  // Sizes rise down the options; what is laid in the tray is 4 AWG at least.
  const at = (id: string | undefined) => options.findIndex((one) => one.id === id);
  const small = told.text.includes('laid in the channel') && at(option?.id) < at('awg-4');
  return small ? { decides: 'in-tray', size: 'awg-4' } : { decides: 'largest', size: option?.id };
};
export default work;

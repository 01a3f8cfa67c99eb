/** What a page says of a set sheet wherever it stands: sheet and its number, bench, person, task, how many draws. */
export type About = Readonly<
  Record<'sheet' | 'person' | 'task', string> & Record<'number' | 'bench' | 'draws', number>
>;

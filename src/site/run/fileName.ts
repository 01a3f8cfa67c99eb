/** What a saved file is called: the run alone apart from its whole file, and never `run` twice. */
export function fileName(
  { number, name }: { readonly number: string; readonly name: string },
  which: 'file' | 'run',
): string {
  const own = (number || name).replace(/[^\w-]+/g, '-').toLowerCase();
  if (which === 'file') return own === '' ? 'run-whole.json' : `${own}.json`;
  return own === '' ? 'run.json' : `${own}.run.json`;
}

import { inchesOf, lengthOf, rowsOf, type SecondOpinion } from './told.ts';

interface Bar {
  readonly from: string;
  readonly length: number;
  readonly pieces: number[];
}

/** Longest piece first into every bar in turn, with so many whole lengths; tried with ever more of them. */
function pack(pieces: readonly number[], bars: readonly Bar[], kerf: number): boolean {
  const [piece, ...rest] = pieces;
  if (piece === undefined) return true;
  const seen = new Set<string>();
  for (const bar of bars) {
    const alike = `${bar.length} ${bar.pieces.join(' ')}`;
    const used = bar.pieces.reduce((sum, one) => sum + one + kerf, 0);
    if (seen.has(alike) || used + piece > bar.length + 1e-9) continue;
    seen.add(alike);
    bar.pieces.push(piece);
    if (pack(rest, bars, kerf)) return true;
    bar.pieces.pop();
  }
  return false;
}

const work: SecondOpinion = (told) => {
  const pieces = rowsOf(told, 'piece').map(({ text }) => inchesOf(text));
  const [stock, kerf] = [lengthOf(told, 'stock'), lengthOf(told, 'kerf')];
  for (let wholes = 0; ; wholes++) {
    const bars: Bar[] = [
      ...rowsOf(told, 'remnant').map(({ label, text }) => ({
        from: label.replace('Remnant ', ''),
        length: inchesOf(text),
        pieces: [],
      })),
      ...Array.from({ length: wholes }, () => ({ from: 'whole', length: stock, pieces: [] })),
    ];
    if (!pack([...pieces].sort((a, b) => b - a), bars, kerf)) continue;
    const plan = bars.filter((bar) => bar.pieces.length > 0).map(({ from, pieces: cut }) => ({ from, pieces: cut }));
    const said = told.asks.find(({ id }) => id === 'left')?.prompt ?? '';
    const [, one, other] = /pieces (\d+) and (\d+)/.exec(said) ?? [];
    const left = stock - (pieces[Number(one) - 1] ?? 0) - (pieces[Number(other) - 1] ?? 0) - 2 * kerf;
    return { count: wholes, left, plan };
  }
};
export default work;

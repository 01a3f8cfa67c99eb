/**
 * Lines and stock lengths as a mixed-integer programme for HiGHS, written from the words of the specification, in inches:
 * supports at whole inches (or on places), splices at sixteenths, and what inspection would find forbidden.
 */
import highsLoader from 'highs';
import type { PlainLine } from './routes.ts';

type Highs = Awaited<ReturnType<typeof highsLoader>>;
const highs: Highs = await highsLoader();

/** Practice sleeve: 10 1/8 in long, 5 in each way, so that 1/8 stays open between the ends. */
const HALF = 10.125 / 2;
const OPEN = 0.125 / 2;
const NEAR_FACE = 24;

class Programme {
  private readonly rows: string[] = [];
  private readonly bounds: string[] = [];
  private readonly whole: string[] = [];
  private readonly yesNo: string[] = [];

  row(terms: readonly (readonly [number, string])[], is: '<=' | '>=' | '=', right: number): void {
    const left = terms.map(([k, name]) => `${k < 0 ? '-' : '+'} ${Math.abs(k)} ${name}`).join(' ');
    this.rows.push(` r${this.rows.length}: ${left} ${is} ${right}`);
  }
  number(name: string, from: number, to: number, isWhole = false): void {
    this.bounds.push(` ${from} <= ${name} <= ${to}`);
    if (isWhole) this.whole.push(name);
  }
  binary(name: string): void {
    this.yesNo.push(name);
  }

  /** true: there is an answer; null: not known within the time. */
  feasible(seconds: number): boolean | null {
    const text = [
      'Minimize',
      ' obj: 0 none',
      'Subject To',
      ...this.rows,
      'Bounds',
      ' none = 0',
      ...this.bounds,
      'General',
      ` ${this.whole.join(' ')}`,
      'Binary',
      ` ${this.yesNo.join(' ')}`,
      'End',
    ].join('\n');
    const { Status } = highs.solve(text, {
      time_limit: seconds,
      mip_feasibility_tolerance: 1e-9,
      primal_feasibility_tolerance: 1e-9,
    });
    if (Status === 'Infeasible') return false;
    return Status === 'Optimal' ? true : null;
  }
}

/** What a line's pieces are: each ends at a splice of an inner span, if one stands there, or at the line's end. */
interface PieceEnd {
  /** Binary that says whether the piece is there; null: it always is. */
  readonly there: string | null;
  /** At least the length to cut. */
  readonly cut: string;
}

/** Puts a line with so many supports into a programme; false when there is no room for so many. */
function putLine(
  p: Programme,
  line: PlainLine,
  name: string,
  count: number,
  stock: number,
): PieceEnd[] | null {
  const [from, to] = line.face;
  const [begin, end] = line.channel;
  const big = end - begin + stock;
  const low = Math.ceil(from);
  const high = Math.floor(to);
  const allowed = line.places?.filter((x) => x >= from && x <= to) ?? null;
  if (allowed === null ? high - low + 1 < count : allowed.length < count) return null;
  const x = (j: number) => `${name}x${j}`;
  for (let j = 0; j < count; j++) {
    if (allowed === null) p.number(x(j), low, high, true);
    else {
      p.number(x(j), from, to);
      const chosen = allowed.map((_, k) => `${name}p${j}_${k}`);
      for (const one of chosen) p.binary(one);
      p.row(
        chosen.map((one) => [1, one]),
        '=',
        1,
      );
      p.row([[-1, x(j)], ...chosen.map((one, k): [number, string] => [allowed[k] as number, one])], '=', 0);
    }
  }
  p.row([[1, x(0)]], '<=', from + NEAR_FACE);
  p.row([[1, x(count - 1)]], '>=', to - NEAR_FACE);
  for (let j = 0; j + 1 < count; j++) {
    p.row(
      [
        [1, x(j + 1)],
        [-1, x(j)],
      ],
      '<=',
      line.maxSpan,
    );
    p.row(
      [
        [1, x(j + 1)],
        [-1, x(j)],
      ],
      '>=',
      allowed === null ? 1 : 1 / 16,
    );
  }

  const pieces: PieceEnd[] = [];
  // Where the piece at hand begins, at most.
  let last: string = `${name}b0`;
  p.number(last, begin, begin);
  for (let j = 1; j + 2 < count; j++) {
    const [near, far, s, sixteenths, next] = ['a', 'z', 's', 'k', 'b'].map(
      (letter) => `${name}${letter}${j}`,
    ) as [string, string, string, string, string];
    const cut = `${name}c${j}`;
    const there = `${name}y${j}`;
    p.binary(near);
    p.binary(far);
    p.binary(there);
    p.row(
      [
        [1, there],
        [-1, near],
        [-1, far],
      ],
      '=',
      0,
    );
    p.number(s, begin, end);
    p.number(sixteenths, Math.floor(16 * begin), Math.ceil(16 * end), true);
    p.row(
      [
        [16, s],
        [-1, sixteenths],
      ],
      '=',
      0,
    );
    const [l, r] = [x(j), x(j + 1)];
    const span = to - from;
    // Near the left support: clear of its strut, and within a quarter of the span.
    p.row(
      [
        [1, s],
        [-1, l],
        [-span, near],
      ],
      '>=',
      HALF - span,
    );
    p.row(
      [
        [4, s],
        [-3, l],
        [-1, r],
        [4 * span, near],
      ],
      '<=',
      4 * span,
    );
    // Or near the right one.
    p.row(
      [
        [1, r],
        [-1, s],
        [-span, far],
      ],
      '>=',
      HALF - span,
    );
    p.row(
      [
        [3, r],
        [1, l],
        [-4, s],
        [4 * span, far],
      ],
      '<=',
      4 * span,
    );
    p.number(next, begin, end);
    p.row(
      [
        [1, next],
        [-1, last],
        [-big, there],
      ],
      '<=',
      0,
    );
    p.row(
      [
        [1, next],
        [-1, s],
        [big, there],
      ],
      '<=',
      big + OPEN,
    );
    p.number(cut, 0, stock);
    p.row(
      [
        [1, cut],
        [-1, s],
        [1, last],
        [-big, there],
      ],
      '>=',
      -OPEN - big,
    );
    pieces.push({ there, cut });
    last = next;
  }
  const cut = `${name}c0`;
  p.number(cut, 0, stock);
  p.row(
    [
      [1, cut],
      [1, last],
    ],
    '>=',
    end,
  );
  pieces.push({ there: null, cut });
  return pieces;
}

/** Whether a line can be laid out with exactly so many supports. */
export function canStand(line: PlainLine, count: number, stock: number, seconds = 20): boolean | null {
  const p = new Programme();
  return putLine(p, line, 'l', count, stock) === null ? false : p.feasible(seconds);
}

/** Whether the lines, with so many supports each, can be cut from so many stock lengths. */
export function canCut(
  lines: readonly PlainLine[],
  counts: readonly number[],
  { stock, kerf }: { readonly stock: number; readonly kerf: number },
  sticks: number,
  seconds = 20,
): boolean | null {
  const p = new Programme();
  const loads: [number, string][][] = Array.from({ length: sticks }, () => []);
  let kinds = 0;
  for (const [i, line] of lines.entries()) {
    const pieces = putLine(p, line, `l${i}`, counts[i] as number, stock);
    if (pieces === null) return false;
    for (const { there, cut } of pieces) {
      const from = loads.map((_, t) => `t${kinds}_${t}`);
      for (const [t, one] of from.entries()) {
        const load = `q${kinds}_${t}`;
        p.binary(one);
        p.number(load, 0, stock + kerf);
        // What the piece and its cut take of this stock length, if it is cut from it.
        p.row(
          [
            [1, load],
            [-1, cut],
            [-(stock + kerf), one],
          ],
          '>=',
          kerf - (stock + kerf),
        );
        loads[t]?.push([1, load]);
      }
      const all = from.map((one): [number, string] => [1, one]);
      if (there === null) p.row(all, '=', 1);
      else p.row([...all, [-1, there]], '=', 0);
      kinds++;
    }
  }
  for (const load of loads) p.row(load, '<=', stock + kerf);
  return p.feasible(seconds);
}

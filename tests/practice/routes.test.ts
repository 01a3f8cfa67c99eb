/** Families on whole runs: any answer that is sound holds, and what is said of one that is not. */
import { describe, expect, it } from 'vitest';
import type { FaultAt, PlacedAt, StickCut } from '../../src/practice/model.ts';
import { draw, finding, grade } from './means.ts';

const marks = (id: string, seed: string, ask: string) => {
  const drawn = draw(id, seed);
  return { drawn, right: drawn.right[ask] as readonly PlacedAt[] };
};

describe('supports', () => {
  const { drawn, right } = marks('place-supports', 'hand-3', 'supports');

  it('hold wherever they are sound, not only where the key has them', () => {
    const moved = right.map((mark, i) => (i === 0 ? { ...mark, at: mark.at - 2 } : mark));
    expect(finding(drawn, 'supports', moved).verdict).toBe('holds');
    expect(finding(drawn, 'supports', right.toReversed()).verdict).toBe('holds');
  });

  it('may be one more than the fewest, and not two', () => {
    const more = (ats: readonly number[]) =>
      finding(drawn, 'supports', [...right, ...ats.map((at) => ({ leg: 'L1', at, what: 'support' }))]);
    expect(more([60]).verdict).toBe('holds');
    expect(more([60, 90])).toMatchObject({ verdict: 'rework', mistake: 'too-many' });
  });

  it('are blamed for what an inspection finds', () => {
    const without = (n: number) => finding(drawn, 'supports', right.toSpliced(n, 1));
    expect(without(right.length - 1).mistake).toBe('end-forgotten');
    expect(without(3).mistake).toBe('fitting-one-side');
    // A splice over a strut; where to look is said, and not what is wrong there.
    const over = right.map((mark, i) => (i === 2 ? { ...mark, at: 238 } : mark));
    const found = finding(drawn, 'supports', over);
    expect(found).toMatchObject({ verdict: 'rework', mistake: 'splices-passed-over' });
    expect(found.says).toContain(`leg L1, near 19'-11"`);
  });

  it('stand on no fitting', () => {
    const on = right.map((mark) => (mark.leg === 'L2' && mark.at < 60 ? { ...mark, at: 2 } : mark));
    expect(finding(drawn, 'supports', on).verdict).toBe('rework');
  });
});

describe('splices', () => {
  const { drawn, right } = marks('place-splices', 'hand-2', 'splices');

  it('hold anywhere beside a support of an inner span, while no piece is too long', () => {
    const at = (first: number) => finding(drawn, 'splices', [{ ...right[0], at: first }, right[1]]).verdict;
    // The inner span from 168 to 244 (worked sum): up to 187 and from 225. Pieces of 240 at most: from 173 3/16, to 238 9/16.
    expect([at(173.1875), at(187), at(225), at(238.5625)]).toEqual(['holds', 'holds', 'holds', 'holds']);
    expect([at(173.125), at(187.0625), at(224.9375)]).toEqual(['rework', 'rework', 'rework']);
  });

  it('are named when they are one too few', () => {
    expect(finding(drawn, 'splices', right.slice(0, 1)).mistake).toBe('one-too-few');
  });
});

describe('jumpers and anchors', () => {
  it('of two reasons left out both are found in the order of the file', () => {
    const { drawn, right } = marks('place-jumpers', 'hand-1', 'jumpers');
    const without = (...n: number[]) =>
      finding(
        drawn,
        'jumpers',
        right.filter((_, i) => !n.includes(i)),
      );
    expect(without(3).mistake).toBe('hinge-missed');
    expect(without(1, 3).mistake).toBe('hinge-missed');
    expect(without(0, 4).mistake).toBe('outside-missed');
    expect(without(3).says).toContain('4 of 5');
  });

  it('one anchor a section, wherever the answer begins', () => {
    const { drawn, right } = marks('place-anchor', 'hand-1', 'anchors');
    expect(finding(drawn, 'anchors', right.toReversed()).verdict).toBe('holds');
    expect(finding(drawn, 'anchors', [...right, { ...right[0], at: 24 }])).toMatchObject({
      verdict: 'rework',
      mistake: 'held-twice',
    });
    // A section left out, a mark off every support, a mark more than 2 in out: none of them the support beside the middle.
    expect(finding(drawn, 'anchors', right.slice(0, 1))).toMatchObject({ verdict: 'rework', mistake: null });
    const off = right.map((mark, i) => (i === 0 ? { ...mark, at: mark.at + 3 } : mark));
    expect(finding(drawn, 'anchors', off)).toMatchObject({ verdict: 'near', mistake: null });
    const more = [...right, { ...right[0], at: (right[0]?.at ?? 0) + 9 }];
    expect(finding(drawn, 'anchors', more)).toMatchObject({ verdict: 'rework', mistake: null });
  });
});

describe('faults', () => {
  const drawn = draw('find-faults', 'hand-1');
  const right = drawn.right['faults'] as readonly FaultAt[];

  it('hold in any order and within 6 in, and not beyond', () => {
    const shifted = (by: number) =>
      right.map((one) => (one.rule === 'anchor-many' ? { ...one, at: one.at + by } : one));
    expect(finding(drawn, 'faults', right.toReversed()).verdict).toBe('holds');
    expect(finding(drawn, 'faults', shifted(6)).verdict).toBe('holds');
    expect(finding(drawn, 'faults', shifted(6.5)).verdict).not.toBe('holds');
  });

  it('one left out, one named without reason, one by another rule', () => {
    const without = (rule: string) =>
      finding(
        drawn,
        'faults',
        right.filter((one) => one.rule !== rule),
      );
    expect(without('jumper-missing').mistake).toBe('bonding-passed-over');
    expect(without('span-too-long').mistake).toBe('spans-passed-over');
    const alarm = finding(drawn, 'faults', [...right, { leg: 'L2', at: 240, rule: 'used-as-step' }]);
    expect(alarm).toMatchObject({ verdict: 'rework', mistake: null });
    expect(alarm.marks).toEqual([...right.map(() => true), false]);
    const other = right.map((one) =>
      one.rule === 'power-with-signal' ? { ...one, rule: 'air-with-cables' } : one,
    );
    expect(finding(drawn, 'faults', other).mistake).toBe('other-rule');
  });
});

describe('cutting plans', () => {
  const drawn = draw('pack-lengths', 'hand-2');
  const plan = drawn.right['plan'] as readonly StickCut[];
  const graded = (cuts: readonly StickCut[]) => finding(drawn, 'plan', cuts);

  it('hold whichever of the best they are', () => {
    expect(
      graded(plan.toReversed().map(({ from, pieces }) => ({ from, pieces: [...pieces].reverse() }))).verdict,
    ).toBe('holds');
  });

  it('do not with a piece left out, cut twice, of another length, or with one length more', () => {
    const [first, ...rest] = plan as [StickCut, ...StickCut[]];
    const [piece = 0, ...others] = first.pieces;
    expect(graded([{ ...first, pieces: others }, ...rest]).verdict).toBe('rework');
    expect(graded([...plan, { from: 'whole', pieces: [piece] }]).verdict).toBe('rework');
    expect(graded([{ ...first, pieces: [piece - 1, ...others] }, ...rest]).verdict).toBe('rework');
    const more = [{ ...first, pieces: [piece] }, { from: 'whole', pieces: others }, ...rest];
    expect(graded(more)).toMatchObject({ verdict: 'rework', mistake: null });
    expect(graded(more).says).toBe(`It opens whole lengths: ${more.length}. Fewer will do.`);
  });

  it('say what cannot be cut so, and not what the plan would be', () => {
    const of = plan.flatMap(({ pieces }) => pieces).length;
    const [first, ...rest] = plan as [StickCut, ...StickCut[]];
    const [piece = 0, ...others] = first.pieces;
    const left = `Not cut from anything: 1 of ${of} pieces.`;
    expect(graded([{ ...first, pieces: others }, ...rest]).says).toContain(left);
    expect(graded([...plan, { from: 'whole', pieces: [piece] }]).says).toContain('nobody asked for: 1.');
    const heaped = [{ ...first, pieces: plan.flatMap(({ pieces }) => pieces) }];
    expect(graded(heaped).says).toBe(
      `More is laid on 20'-0" than comes out of it, with the saw cuts between.`,
    );
  });
});

describe('remnants', () => {
  const drawn = draw('pack-remnants', 'hand-2');
  it('which plan of several is the key does not hang on the search', () => {
    // Longest piece first into the first remnant, then length, after which all others find a place (worked by hand).
    expect(drawn.right['plan']).toEqual([
      { from: 'r1', pieces: [93.5] },
      { from: 'r2', pieces: [130.5] },
      { from: 'r3', pieces: [118.5] },
      { from: 'whole', pieces: [138, 93] },
      { from: 'whole', pieces: [78] },
    ]);
  });
  it('a remnant is there once', () => {
    const plan = drawn.right['plan'] as readonly StickCut[];
    const twice = plan.map((one) => (one.from === 'r1' ? { ...one, from: 'r2' } : one));
    expect(finding(drawn, 'plan', twice).says).toMatch(
      /^The remnant of [^;]+ is there once; it is used twice\.$/,
    );
  });
  it('what is left and what is drilled', () => {
    // 240 − 93 1/2 − 93, less two cuts, one, none; ends: r1 and r3 keep one with holes, r2 none.
    const left = (value: number) => finding(drawn, 'left', value);
    expect([left(53.25).verdict, left(53.375).mistake, left(53.5).mistake]).toEqual([
      'holds',
      'one-saw-cut',
      'saw-cuts-left-out',
    ]);
    expect([3, 6].map((n) => finding(drawn, 'drill', n).mistake)).toEqual(['new-cut-only', 'every-end']);
  });
});

describe('jobs', () => {
  it('later steps are judged from an earlier answer', () => {
    const drawn = draw('job-drop', 'hand-1');
    // 16'-6" read as 16'-5": every later step is an inch less (worked sum beside the family).
    const wrong = {
      drop: { height: 197 },
      cuts: { l1: 122.75, l2: 182, l3: 65.375 },
      load: { foot: 1.86, lb: (1.86 * 197) / 12 },
      brackets: { count: 5, bears: 'middle' },
    };
    const { findings, passed } = grade(drawn, wrong);
    expect(findings.map(({ ask, verdict, mistake }) => [ask, verdict, mistake])).toEqual([
      ['drop', 'rework', 'tenths-as-inches'],
      ['cuts', 'holds from there', null],
      ['load', 'holds from there', null],
      ['brackets', 'holds', null],
    ]);
    expect(passed).toBe(false);
  });

  it('a drop is weighed from working point to working point: the elbows hang there too (statics)', () => {
    // Seed hand-1 beside the family: 198 high, 18 of it take-outs, cut 183; 1.86 lb/ft.
    const drawn = draw('job-drop', 'hand-1');
    const weighed = (lb: number) => finding(drawn, 'load', { foot: 1.86, lb });
    expect(weighed(30.69).verdict).toBe('holds');
    expect(weighed(27.9).mistake).toBe('weighed-face-to-face'); // 180 / 12 = 15 ft
    expect(weighed(28.365).mistake).toBe('weighed-the-piece'); // 183 / 12 = 15.25 ft
  });

  it('a step of which one part is out tells which', () => {
    const drawn = draw('job-wall-run', 'hand-1');
    const found = finding(drawn, 'cuts', { l1: 41, l2: 146.625, l3: 33.875 });
    expect(found.parts).toEqual({ l1: true, l2: false, l3: true });
    const lengths = grade(drawn, {
      cuts: { l1: 39.5, l2: 145.125, l3: 30.875 },
      lengths: { total: 215.5, whole: 1 },
    });
    expect(lengths.findings.slice(0, 2).map(({ verdict, mistake }) => [verdict, mistake])).toEqual([
      ['rework', 'insertion-forgotten'],
      ['holds from there', null],
    ]);
  });
});

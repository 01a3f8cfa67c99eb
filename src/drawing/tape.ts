/** A tape at a reading: sixteenths by the height of their marks, inches numbered within the foot, the foot on a flag. */
import { formatLength, inches, type Ticks } from '../trade/length.ts';
import { textWidth } from './glyphs.ts';
import { Plan, SIZES } from './plan.ts';
import { spoken } from './spoken.ts';
import { render, type Sheet } from './svg.ts';
import type { Drawing, Form, How } from './types.ts';

export interface TapeGiven {
  /** From the hook. */
  readonly reading: Ticks;
  /** Whether the reading is written under its pointer, and said in the words. */
  readonly printed: boolean;
}

interface Layout {
  readonly width: number;
  readonly inches: number;
}
const LAYOUT: Readonly<Record<Form, Layout>> = {
  phone: { width: 328, inches: 1.75 },
  desk: { width: 480, inches: 2.5 },
  paper: { width: 480, inches: 2.5 },
};
const TOP = 26;
const BLADE = 56;
/** Heights of the marks: whole inch, half, quarter, eighth, sixteenth. */
const MARKS = [44, 34, 26, 19, 13] as const;
const FLAG = 56;

/** Where an inch on the tape stands on the sheet; the window is round the reading, or begins at the hook. */
export function tapeScale({ reading }: TapeGiven, form: Form) {
  const { width, inches: window } = LAYOUT[form];
  const at = inches(reading);
  const hook = at < window * 0.6;
  const x0 = hook ? 16 : FLAG + 8;
  const px = (width - 10 - x0) / window;
  const first = hook ? 0 : at - window / 2;
  return { x: (inch: number) => x0 + (inch - first) * px, first, last: first + window, hook, x0 };
}

export function drawTape(given: TapeGiven, how: How): Drawing {
  return render(layTape(given, how), how);
}

export function layTape(given: TapeGiven, { form, speak }: How): Sheet {
  const { reading, printed } = given;
  const { width } = LAYOUT[form];
  const { x, first, last, hook, x0 } = tapeScale(given, form);
  const plan = new Plan();
  const end = width - 7;
  const bottom = TOP + BLADE;

  plan.rect({ x: x0 - (hook ? 0 : 8), y: TOP, w: end - x0 + (hook ? 0 : 8), h: BLADE }, { fill: 'galv' });
  for (const y of [TOP, bottom]) plan.line('edge', [hook ? x0 : 4, y], [end, y]);
  if (hook) {
    plan.polygon(
      [
        [x0, TOP - 2],
        [x0, bottom],
        [x0, bottom + 12],
        [x0 - 7, bottom + 12],
        [x0 - 7, TOP - 2],
      ],
      { fill: 'galv2', pen: 'thin', part: 'hook' },
    );
  } else {
    const foot = Math.floor(first / 12);
    plan.rect({ x: 4, y: TOP, w: FLAG - 8, h: BLADE }, { fill: 'ink', part: 'flag' });
    flagText(plan, 4 + (FLAG - 8) / 2, foot, speak, 'flag');
    plan.breakLine(FLAG, TOP, bottom);
  }
  plan.breakLine(end, TOP, bottom);

  for (let n = Math.ceil(first * 16); n <= Math.floor(last * 16); n++) {
    const at = x(n / 16);
    const step = [16, 8, 4, 2, 1].findIndex((d) => n % d === 0);
    if (n === 0) continue;
    plan.line(step === 0 ? 'edge' : 'dimension', [at, TOP], [at, TOP + (MARKS[step] ?? 13)], `mark ${n}`);
    if (step === 0) inchLabel(plan, at, n / 16, end, speak);
  }

  const at = x(inches(reading));
  plan.polygon(
    [
      [at - 7, 6],
      [at + 7, 6],
      [at, TOP - 4],
    ],
    { fill: 'mark', part: 'pointer' },
  );
  plan.line('mark', [at, TOP - 6], [at, printed ? bottom + 4 : TOP + 19], 'pointer');
  let height = bottom + 14;
  if (printed) {
    const text = formatLength(reading);
    const half = textWidth(text, SIZES.text) / 2;
    const middle = Math.min(Math.max(at, half + 4), width - half - 4);
    plan.text([middle, bottom + 22], text, { colour: 'mark', part: 'reading' });
    height = bottom + 30;
  }
  const words = printed
    ? speak({ say: 'drawing.tapeWords', values: { reading: spoken(reading, speak) } })
    : marksWords(given, speak);
  return { view: 'tape', width, height, plan, words, zones: {} };
}

/** The inch within its foot, right of its mark; a whole foot on a flag of its own. */
function inchLabel(plan: Plan, at: number, inch: number, end: number, speak: How['speak']): void {
  const part = `inch ${inch}`;
  if (inch % 12 === 0) {
    if (at + 46 > end) return;
    plan.rect({ x: at + 3, y: TOP + 21, w: 42, h: 24 }, { fill: 'ink', part });
    plan.text([at + 24, TOP + 38.5], speak({ say: 'drawing.feet', values: { feet: inch / 12 } }), {
      colour: 'sheet',
      weight: 700,
      part,
    });
    return;
  }
  const text = String(inch % 12);
  if (at + 5 + textWidth(text, SIZES.big) > end) return;
  plan.text([at + 5, TOP + 45], text, {
    size: SIZES.big,
    weight: 700,
    anchor: 'start',
    ground: 'galv',
    part,
  });
}

function flagText(plan: Plan, x: number, foot: number, speak: How['speak'], part: string): void {
  plan.text([x, TOP + BLADE / 2 + 6], speak({ say: 'drawing.feet', values: { feet: foot } }), {
    colour: 'sheet',
    weight: 700,
    part,
  });
}

/** Says where the pointer stands without reading it: the foot, the inch before it, and which mark after it. */
function marksWords({ reading }: TapeGiven, speak: How['speak']): string {
  const sixteenths = inches(reading) * 16;
  const whole = Math.floor(sixteenths / 16);
  const marks = Math.round((sixteenths - whole * 16) * 100) / 100;
  return speak({
    say: 'drawing.tapeMarks',
    values: { foot: Math.floor(whole / 12), inch: whole % 12, marks },
  });
}

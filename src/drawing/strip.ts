/** A straight run to scale: pieces, splices, the whole, and what is left of the last length. */

import { formatLength } from '../trade/length.ts';
import { shortLength } from '../trade/shortLength.ts';
import { drawBalloons, type Target } from './balloon.ts';
import { across } from './dimension.ts';
import { frameOf, LETTERS, MARGIN } from './frame.ts';
import { textWidth } from './glyphs.ts';
import { layLabels } from './labels.ts';
import { drawNotes } from './notes.ts';
import { Plan, SIZES } from './plan.ts';
import type { Colour } from './shapes.ts';
import { drawFace } from './stripFace.ts';
import type { StripGiven } from './stripGiven.ts';
import { stripNotes } from './stripNotes.ts';
import { letterPieces } from './stripPieces.ts';
import { STRIP_LAYOUT, stripScale } from './stripScale.ts';
import { stripWords } from './stripWords.ts';
import { render, type Sheet } from './svg.ts';
import type { Drawing, How } from './types.ts';

export type { StripGiven } from './stripGiven.ts';

export function drawStrip(given: StripGiven, how: How): Drawing {
  return render(layStrip(given, how), how);
}

export function layStrip(given: StripGiven, how: How): Sheet {
  const { leg, stock, balloons = [] } = given;
  const { form, speak } = how;
  const { width, bar, high, splice: least, whole } = STRIP_LAYOUT[form];
  const margin = MARGIN[form];
  const { x, pxPerTick, left } = stripScale(given, form);
  const plan = new Plan();
  const targets: Record<string, Target> = {};
  const end = x(leg.length);

  if (left !== undefined && left.length > 0) {
    const from = x(leg.length + left.kerf);
    plan.rect(
      { x: from, y: bar, w: x(leg.length + left.kerf + left.length) - from, h: high },
      { pen: 'phantom', part: 'left over' },
    );
    targets['left-over'] = {
      at: [(from + x(leg.length + left.kerf + left.length)) / 2, bar + high * 0.8],
      likes: 60,
    };
  }

  for (const { number, from, to, cut } of leg.pieces) {
    const box = { x: x(from), y: bar, w: (to - from) * pxPerTick, h: high };
    const fill: Colour = stock !== undefined && cut < stock ? 'sheet' : 'galv';
    plan.rect(box, { pen: 'edge', fill, part: `piece ${number}` });
    targets[`piece-${number}`] = { at: [box.x + Math.min(box.w * 0.2, 26), bar + high - 2], likes: 110 };
  }
  if (left !== undefined) plan.line('mark', [end, bar - 6], [end, bar + high + 6], 'cut');
  targets['start'] = { at: [x(0), bar + high * 0.5], likes: 130 };
  targets['end'] = { at: [end, bar + high * 0.5], likes: 50 };

  let wider = false;
  for (const { name, at, kind, length } of leg.joints) {
    const real = length * pxPerTick;
    const w = Math.max(real, least);
    wider ||= w > real;
    const part = `splice ${name}`;
    if (kind === 'socketed')
      plan.rect({ x: x(at) - w / 2, y: bar - 5, w, h: high + 10 }, { pen: 'thin', fill: 'sheet', part });
    else {
      plan.rect(
        { x: x(at) - w / 2, y: bar + high * 0.22, w, h: high * 0.56 },
        { pen: 'thin', fill: 'sheet', part },
      );
      plan.line('edge', [x(at), bar], [x(at), bar + high]);
    }
    plan.line('centre', [x(at), bar - 14], [x(at), bar + high + 12]);
    targets[name.toLowerCase()] = { at: [x(at) + w / 2, bar + 4], likes: -60 };
  }

  drawFace(plan, leg.start, x(0), -1, bar, high);
  drawFace(plan, leg.end, end, 1, bar, high, pxPerTick);
  leg.supports.forEach(({ at }, i) => {
    const box = { x: x(at) - 5, y: bar + high + 1.5, w: 10, h: 9 };
    plan.rect(box, { pen: 'thin', fill: 'sheet', part: `support ${i}` });
    plan.text([x(at), bar + high + 25], LETTERS[i % LETTERS.length] ?? '', {
      size: SIZES.note,
      part: `support ${i}`,
    });
  });

  across(plan, x(0), end, margin + 38, formatLength(leg.length), {
    from: bar,
    size: whole,
    part: 'whole',
    beside: 'behind',
  });
  targets['whole'] = { at: [x(0) + (end - x(0)) * 0.2, margin + 38], likes: 90 };
  plan.keep({ x: x(0), y: bar - 6, w: end - x(0), h: high + 12 });

  const lettered = letterPieces(plan, given, form, x, bar, high);
  if (left !== undefined && left.length > 0) {
    const from = x(leg.length + left.kerf);
    const room = x(leg.length + left.kerf + left.length) - from;
    const text = speak({ say: 'drawing.left', values: { length: shortLength(left.length) } });
    if (textWidth(text, SIZES.note) + 12 < room) {
      plan.text([from + room / 2, bar + high / 2 + 5], text, { size: SIZES.note, part: 'left over' });
    }
  }

  const under = leg.supports.length > 0 ? 20 : 0;
  const datum = speak({ say: form === 'phone' ? 'drawing.datumShort' : `drawing.datum-${leg.start.kind}` });
  const rows = layLabels(plan, {
    datum: { x: x(0), text: datum },
    marks: leg.joints.map(({ name, at }) => ({
      x: x(at),
      full: `${name}  ${formatLength(at)}`,
      short: name,
    })),
    from: bar + high,
    top: bar + high + under,
    bounds: [margin + 8, width - margin - 8],
    size: form === 'phone' ? SIZES.note : SIZES.text,
  });

  const title = rows + (form === 'phone' ? 30 : 34);
  const scale = speak({ say: wider ? 'drawing.scaleWider' : 'drawing.scale' });
  plan.viewTitle([width / 2, title], speak({ say: 'drawing.stripTitle' }), scale);
  const notes = stripNotes(given, lettered, how);
  const height = Math.ceil(drawNotes(plan, notes, { form, width, margin, top: title + 40 }) + margin);
  const frame = frameOf(form, width, height);
  const zones = drawBalloons(plan, frame, form, balloons, targets);
  return { view: 'strip', width, height, frame, plan, zones, words: stripWords(given, left?.length, how) };
}

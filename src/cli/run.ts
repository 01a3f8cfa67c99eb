/** `run VERB`: a run of channel in, what follows from it out. A new verb is an entry of the list below. */
import { paperPalette } from '../drawing/palette.ts';
import { FORMS } from '../drawing/types.ts';
import { drawRun, VIEWS } from '../drawing/views.ts';
import { type Finding, inspect } from '../run/inspect/inspect.ts';
import { type LayoutResult, layout } from '../run/layout/layout.ts';
import { takeoff } from '../run/takeoff.ts';
import { runJson } from '../run/writeRun.ts';
import { type Fault, GivenError } from '../trade/given.ts';
import { inches } from '../trade/length.ts';
import type { Speak } from '../trade/say.ts';
import { onResolved, type RunVerb, runVerb } from './runVerb.ts';
import { untilLate } from './untilLate.ts';
import type { Group } from './verb.ts';

const takeoffVerb: RunVerb = {
  name: 'takeoff',
  line: 'pieces, sticks, hardware, jumpers, fill, gaps, loads and cable lengths of a run',
  results: [
    ['pieces', '[{id, leg, cutIn, ends [{joint, takeOutIn, insertionIn, shareIn}]}]'],
    ['sticks', '[{tray, … as calc sticks}]: which lengths to cut them from'],
    ['hardware, fasteners', '[{item, count}]; of the splices [{fastening, count}]'],
    ['jumpers', '[{leg, atIn, reason, size, holds}]: what is needed, given or not'],
    ['fill', '[{leg, side?, areaIn2, allowedIn2, within, refer}]'],
    ['gaps', '[{leg, atIn, gapIn}]: of expansion splices, what is wanted'],
    ['supportLoads, rodLoads', '[{leg, atIn, lb}]; lb null: nothing on the leg takes its weight'],
    ['weights', '[{leg, trayLb, cablesLb, lb}]'],
    ['cableLengthsIn', '{id: in}'],
  ],
  work: onResolved(() => (resolved, { catalogue, tables, speak }) => {
    const { result, steps, sources } = takeoff(resolved, catalogue, tables, untilLate());
    const sticks = result.sticks.map(({ why, ...plan }) => ({
      ...plan,
      ...(why === undefined ? {} : { why: why.map(speak).join(' ') }),
    }));
    return { result: { ...result, sticks }, steps, sources };
  }),
};

/** A finding as it is printed: its place in inches, its sentences in words. */
function written({ rule, leg, at, say, todo, ...finding }: Finding, speak: Speak) {
  const atIn = at === null ? null : inches(at);
  return { rule, leg, atIn, ...finding, say: speak(say), todo: speak(todo) };
}

const inspectVerb: RunVerb = {
  name: 'inspect',
  line: 'what is wrong with a run, where, and what to do',
  results: [
    ['findings', '[{rule, leg, atIn, measured, limit, unit, source, say, todo}]; atIn null: the whole leg'],
    ['rules', '[id]: those that were tried'],
  ],
  work: onResolved(() => (resolved, { catalogue, tables, speak }) => {
    const { result, steps, sources } = inspect(resolved, catalogue, tables);
    const findings = result.findings.map((finding) => written(finding, speak));
    return { result: { ...result, findings }, steps, sources };
  }),
};

/** The run as it reads back, or where it is refused. */
function laid(result: LayoutResult, speak: Speak) {
  if (result.run !== null) return { ...result, run: runJson(result.run) };
  const { rule, leg, at, say } = result.refused;
  const atIn = at === null ? null : inches(at);
  return { run: null, refused: { rule, leg, atIn, say: speak(say) } };
}

const layoutVerb: RunVerb = {
  name: 'layout',
  line: 'supports, splices, anchors, jumpers and gaps of a run, with proofs; or the rule that cannot be kept',
  results: [
    ['run', 'the run laid out, as it reads back; null where it is refused'],
    ['proven', '{supports, stock}: whether no lay-out has fewer'],
    ['bound', '{supports, stock}: no lay-out has fewer; stock among those with so few supports'],
    ['refused', '{rule, leg, atIn, say}: the rule that no choice can satisfy; atIn null: the whole leg'],
  ],
  work:
    () =>
    (run, { catalogue, tables, speak }) => {
      const { result, steps, sources } = layout(run, catalogue, tables);
      return { result: laid(result, speak), steps, sources };
    },
};

/** A view or form as an option names it; none where it is left out. */
function named<T extends string>(option: string, text: string | undefined, all: readonly T[]): Named<T> {
  const found = all.find((one) => one === text);
  if (text === undefined || found !== undefined) return { found, faults: [] };
  const todo = `name one of ${all.join(' ')}`;
  return { found, faults: [{ field: `--${option}`, value: text, message: 'there is no such', todo }] };
}

interface Named<T> {
  readonly found: T | undefined;
  readonly faults: readonly Fault[];
}

const drawVerb: RunVerb = {
  name: 'draw',
  line: 'drawings of a run, findings marked on them',
  options: {
    view: { value: 'VIEW', line: `one view alone: ${VIEWS.join(' ')}` },
    form: { value: 'FORM', line: 'phone, desk (the default) or paper' },
    of: { value: 'PLACE', line: 'with --view, what it shows: a leg, joint, piece or support by its name' },
  },
  results: [['views', '[{view, svg, words}]: words say the measures to someone who cannot see the lines']],
  work: onResolved(({ text }) => {
    const view = named('view', text('view'), VIEWS);
    const form = named('form', text('form'), FORMS);
    const of = text('of');
    const faults = [...view.faults, ...form.faults];
    if (of !== undefined && text('view') === undefined) {
      faults.push({
        field: '--of',
        value: of,
        message: 'no view is named that shows it',
        todo: 'name one by --view',
      });
    }
    if (faults.length > 0) throw new GivenError(faults);
    const views = view.found === undefined ? undefined : [view.found];
    return (resolved, { catalogue, tables, speak }) => {
      const { findings } = inspect(resolved, catalogue, tables).result;
      const given = { catalogue, tables, findings, of, views };
      const how = { form: form.found ?? 'desk', palette: paperPalette, speak } as const;
      const drawn = drawRun(resolved, given, how).map(({ view, svg, words }) => ({ view, svg, words }));
      return { result: { views: drawn }, steps: [], sources: [] };
    };
  }),
};

const VERBS: readonly RunVerb[] = [takeoffVerb, inspectVerb, layoutVerb, drawVerb];

export const group: Group = {
  name: 'run',
  line: 'a run of channel: take-off, inspection, lay-out, drawings',
  verbs: VERBS.map(runVerb),
};

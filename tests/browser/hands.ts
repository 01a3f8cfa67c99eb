/** A person's hands at a draw: every kind of ask answered by keyboard alone, or by touch alone. */
import type { Locator, Page } from 'playwright-core';
import { pagePalette } from '../../src/drawing/palette.ts';
import type { PlaceWhat, TapGiven, TapTarget } from '../../src/drawing/tap/given.ts';
import { layTap } from '../../src/drawing/tap/tap.ts';
import { askOf, type Draw } from '../../src/practice/draw.ts';
import type { Answer, FaultAt, PlacedAt, StickCut, World } from '../../src/practice/model.ts';
import { type ShownAsk, tellDraw } from '../../src/practice/show.ts';
import type { Language } from '../../src/practice/words.ts';
import { benchOf } from '../../src/site/islands/practice/asks/bench.ts';
import { faultOn } from '../../src/site/islands/practice/asks/onRun.ts';
import { textParts } from '../../src/site/practice.ts';
import { formatLength, fromInches, inches } from '../../src/trade/length.ts';

/** How a person gets at a control: with the keys, or with a thumb. */
export interface Hands {
  /** A button or a box to check. */
  press(control: Locator): Promise<void>;
  /** One of a group of choices: `index` of them. */
  choose(radios: Locator, index: number): Promise<void>;
  write(page: Page, box: Locator, text: string): Promise<void>;
  /** The option of a list with that value. */
  pick(list: Locator, value: string): Promise<void>;
}

export const keys: Hands = {
  async press(control) {
    await control.focus();
    await control.press('Space');
  },
  async choose(radios, index) {
    await radios.first().focus();
    await radios.first().press('Space');
    for (let i = 0; i < index; i++) await radios.nth(i).press('ArrowDown');
  },
  async write(page, box, text) {
    await box.focus();
    await box.press('ControlOrMeta+a');
    await page.keyboard.type(text);
    await box.press('Tab');
  },
  async pick(list, value) {
    await list.focus();
    const values = await list
      .locator('option')
      .evaluateAll((all) => all.map((one) => (one as HTMLOptionElement).value));
    const now = values.indexOf(await list.inputValue());
    const to = values.indexOf(value);
    if (to < 0) throw new Error(`no option ${value} among ${values.join(', ')}`);
    for (let i = Math.abs(to - now); i > 0; i--) await list.press(to > now ? 'ArrowDown' : 'ArrowUp');
  },
};

export const thumb: Hands = {
  press: (control) => control.tap(),
  choose: (radios, index) => radios.nth(index).tap(),
  async write(page, box, text) {
    await box.tap();
    await box.fill(text);
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  },
  async pick(list, value) {
    await list.tap();
    await list.selectOption(value);
  },
};

export interface Before {
  readonly page: Page;
  readonly draw: Draw;
  readonly world: World;
  readonly language: Language;
  readonly hands: Hands;
}

/** Answers every ask that has an answer; the others stay blank. */
export async function answerAll(before: Before, answers: Readonly<Record<string, Answer>>): Promise<void> {
  for (const ask of tellDraw(before.draw, before.world, before.language).asks) {
    const answer = answers[ask.id];
    if (answer !== undefined) await answerAsk(before, before.page.locator('form.asks'), ask, ask.id, answer);
  }
}

async function answerAsk(
  before: Before,
  inside: Locator,
  ask: ShownAsk,
  within: string,
  answer: Answer,
): Promise<void> {
  const { page, hands } = before;
  // Where one taps the drawing, how a place would be written is left unsaid.
  const onDrawing = ask.kind === 'place' || ask.kind === 'faults';
  const name = onDrawing ? textParts(ask.prompt).lead : ask.prompt;
  const group = inside.getByRole('group', { name, exact: true }).first();
  if (typeof answer === 'number') {
    const length = ask.unit === 'in';
    const box = length ? group.getByLabel('Feet', { exact: true }) : group.getByRole('textbox');
    const text = length ? formatLength(fromInches(answer), 64) : String(Number(answer.toFixed(6)));
    await hands.write(page, box, text);
  } else if (typeof answer === 'string') {
    const index = ask.options?.findIndex(({ id }) => id === answer) ?? -1;
    await hands.choose(group.getByRole('radio'), index);
  } else if (ask.kind === 'order') await putInOrder(before, group, ask, answer as readonly string[]);
  else if (ask.kind === 'place') await setDown(before, group, ask, within, answer as readonly PlacedAt[]);
  else if (ask.kind === 'faults') await nameFaults(before, group, within, answer as readonly FaultAt[]);
  else if (ask.kind === 'sticks') await layOut(before, group, within, answer as readonly StickCut[]);
  else {
    const parts = answer as Readonly<Record<string, Answer>>;
    for (const part of ask.parts ?? []) {
      const of = parts[part.id];
      if (of !== undefined) await answerAsk(before, group, part, within, of);
    }
  }
}

async function putInOrder({ hands }: Before, group: Locator, ask: ShownAsk, order: readonly string[]) {
  const textOf = (id: string) => ask.items?.find((item) => item.id === id)?.text ?? id;
  for (const [place, id] of order.entries()) {
    const earlier = group.getByRole('button', { name: `Earlier: ${textOf(id)}`, exact: true });
    for (;;) {
      const rows = await group.locator('.order > li > span').allTextContents();
      const at = rows.indexOf(textOf(id));
      // An order that stands as it should counts only once a row was moved: there and back.
      if (at === place && (place > 0 || (await group.locator('.unmoved').count()) === 0)) break;
      if (at === place) await hands.press(group.getByRole('button', { name: /^Later:/ }).first());
      else await hands.press(earlier);
    }
  }
}

function targetsOf({ draw, world, language }: Before, within: string, tap: TapGiven['tap']) {
  const resolved = askOf(draw.model, within).on?.(draw.plan, world);
  if (resolved === undefined) throw new Error(`${within} has no run`);
  const how = { form: 'phone', palette: pagePalette, speak: language.speak } as const;
  return layTap({ resolved, tap, chosen: [] }, how).targets;
}

/** The nearest place that can be tapped, then by whole inches to where it belongs. */
async function setDown(
  before: Before,
  group: Locator,
  ask: ShownAsk,
  within: string,
  marks: readonly PlacedAt[],
) {
  const { hands } = before;
  const whats = ask.options ?? [];
  for (const mark of marks) {
    if (whats.length > 1) {
      const index = whats.findIndex(({ id }) => id === mark.what);
      await hands.choose(group.getByRole('radio'), index);
    }
    const targets = targetsOf(before, within, { kind: 'place', what: mark.what as PlaceWhat });
    const taken = await group
      .getByRole('checkbox', { checked: true })
      .evaluateAll((all) => all.map((one) => one.getAttribute('aria-label')));
    const free = targets.filter(({ words }) => !taken.includes(words));
    const target = nearest(free, mark, ({ at }) => at ?? 0);
    const between = Math.abs(mark.at - Math.round(mark.at)) > 1 / 128;
    if (between && Math.abs((target.at ?? 0) - mark.at) > 1 / 128) {
      await byMeasure(before, group, mark);
      continue;
    }
    await hands.press(group.getByRole('checkbox', { name: target.words, exact: true }));
    let at = target.at ?? 0;
    const row = () =>
      group
        .locator('.set-down > li')
        .filter({ hasText: `Leg ${mark.leg} at ${short(at)}:` })
        .first();
    while (Math.abs(mark.at - at) >= 0.5) {
      const by = Math.abs(mark.at - at) >= 4 ? 6 : 1;
      const on = mark.at > at;
      await hands.press(row().getByRole('button', { name: on ? `+${by} in` : `-${by} in` }));
      at += on ? by : -by;
    }
  }
}

/** A place between whole inches is written down. */
async function byMeasure({ page, hands }: Before, group: Locator, mark: PlacedAt) {
  const entry = group.locator('.by-measure');
  const summary = entry.locator('summary');
  if (!(await entry.evaluate((details) => (details as HTMLDetailsElement).open))) await hands.press(summary);
  await hands.pick(entry.getByLabel('Leg', { exact: true }), mark.leg);
  await hands.write(page, entry.getByLabel('Feet', { exact: true }), formatLength(fromInches(mark.at), 64));
  await hands.press(entry.getByRole('button', { name: 'Set it down there' }));
}

const short = (at: number) => formatLength(fromInches(at), 16).replace(/^0'-/, '');

function nearest(
  targets: readonly TapTarget[],
  mark: { readonly leg: string; readonly at: number },
  atOf: (target: TapTarget) => number,
): TapTarget {
  const [best] = targets
    .filter(({ leg }) => leg === mark.leg)
    .sort((a, b) => Math.abs(atOf(a) - mark.at) - Math.abs(atOf(b) - mark.at));
  if (best === undefined) throw new Error(`nothing can be tapped on leg ${mark.leg}`);
  return best;
}

async function nameFaults(before: Before, group: Locator, within: string, faults: readonly FaultAt[]) {
  const { hands } = before;
  const targets = targetsOf(before, within, { kind: 'faults' });
  for (const fault of faults) {
    const target = nearest(targets, fault, (one) => faultOn(one, fault.rule).at);
    await hands.press(group.getByRole('button', { name: target.words, exact: true }).first());
    await hands.pick(group.getByLabel('What is wrong with it?'), fault.rule);
    await hands.press(group.getByRole('button', { name: 'Name this fault' }));
  }
}

async function layOut(before: Before, group: Locator, within: string, cuts: readonly StickCut[]) {
  const { hands, draw, world } = before;
  const given = askOf(draw.model, within).sticks?.(draw.plan, world);
  if (given === undefined) throw new Error(`${within} gives nothing to cut from`);
  const bars = [...benchOf(given).bars];
  const free = new Set(bars.keys());
  const open = new Set(given.pieces.keys());
  for (const cut of cuts) {
    let bar = [...free].find((one) => bars[one] === cut.from);
    if (bar === undefined) {
      const length = given.from.find(({ id }) => id === cut.from)?.length ?? given.kerf;
      const name = `Take another ${short(inches(length))} length`;
      await hands.press(group.getByRole('button', { name, exact: true }));
      bar = bars.push(cut.from) - 1;
    }
    free.delete(bar);
    for (const piece of cut.pieces) {
      const number = [...open].find(
        (one) => Math.abs(inches(given.pieces[one] ?? given.kerf) - piece) < 1 / 128,
      );
      if (number === undefined) throw new Error(`no piece of ${piece} in`);
      open.delete(number);
      await hands.pick(group.getByLabel(new RegExp(`^Piece ${number + 1},`)), String(bar));
    }
  }
}

/** What must hold inside a practice family, and between it and the model that it names; its form is in `scenario.ts`. */
import type { AuthoredFamily, OrderAsk, Parameter } from '../practice/family.ts';
import type { AnyModel, Want } from '../practice/model.ts';
import { models } from '../practice/models/index.ts';

/** Takes a fault: where in the family, what is wrong, what to do. */
export type Add = (path: readonly PropertyKey[], message: string, todo: string) => void;

/** Everything that does not hold in a family whose form is good. */
export function familyChecks(family: AuthoredFamily, add: Add): void {
  twice(family.asks, ['asks'], add);
  twice(family.mistakes, ['mistakes'], add);
  twice(family.givens, ['givens'], add);
  const asks = family.asks.map((a) => a.id);
  const known = (path: readonly PropertyKey[], ids: readonly string[]) => {
    for (const [i, one] of ids.entries())
      if (!asks.includes(one)) add([...path, i], 'no such ask here', `name one of ${asks.join(', ')}`);
  };
  known(['critical'], family.critical);
  for (const [i, { asks: on }] of family.mistakes.entries()) known(['mistakes', i, 'asks'], on);
  for (const one of asks)
    if (!(one in family.worked.answers))
      add(['worked', 'answers', one], 'no answer worked by hand', 'work it and write it');
  for (const [i, one] of family.asks.entries()) {
    if ('options' in one) twice(one.options, ['asks', i, 'options'], add);
    if (one.kind === 'faults') twice(one.rules, ['asks', i, 'rules'], add);
    if (one.kind === 'job') twice(one.parts, ['asks', i, 'parts'], add);
    if (one.kind === 'order') {
      twice(one.items, ['asks', i, 'items'], add);
      precedenceHolds(one, ['asks', i, 'precedence'], add);
    }
  }
  const model = models.get(family.model);
  if (model === undefined)
    add(['model'], 'there is no such model', `name one of ${[...models.keys()].join(', ')}`);
  else modelFits(family, model, add);
}

function twice(list: readonly { readonly id: string }[], path: readonly PropertyKey[], add: Add): void {
  for (const [i, { id: one }] of list.entries())
    if (list.findIndex((o) => o.id === one) < i)
      add([...path, i, 'id'], 'this id stands twice', 'give it another');
}

/** Every pair names items, and the items stand in an order that keeps to it; so no pair can bite another's tail. */
function precedenceHolds(
  { items, precedence }: Pick<OrderAsk, 'items' | 'precedence'>,
  path: readonly PropertyKey[],
  add: Add,
): void {
  const place = (item: string) => items.findIndex((one) => one.id === item);
  for (const [i, pair] of precedence.entries()) {
    const unknown = pair.flatMap((item, k) => (place(item) === -1 ? [k] : []));
    for (const k of unknown)
      add([...path, i, k], 'no such item here', `name one of ${items.map((o) => o.id).join(', ')}`);
    if (unknown.length === 0 && place(pair[0]) >= place(pair[1]))
      add(
        [...path, i],
        'the items above stand in another order',
        'exchange the two, or move the item in the list',
      );
  }
}

/** Holds a family against the model it names: asks, slips, parameters. */
function modelFits(family: AuthoredFamily, model: AnyModel, add: Add): void {
  const slips = Object.keys(model.slips);
  for (const [i, { slip }] of family.mistakes.entries())
    if (![slip].flat().every((one) => slips.includes(one)))
      add(['mistakes', i, 'slip'], 'the model knows no such slip', `name one of ${slips.join(', ')}`);
  for (const [i, { id: one, kind }] of family.asks.entries()) {
    const wanted = model.asks[one];
    if (wanted === undefined)
      add(
        ['asks', i, 'id'],
        'the model answers no such ask',
        `name one of ${Object.keys(model.asks).join(', ')}`,
      );
    else if (wanted.kind !== kind)
      add(['asks', i, 'kind'], `the model answers a ${wanted.kind}`, `write ${wanted.kind}`);
  }
  for (const one of Object.keys(model.asks))
    if (!family.asks.some((a) => a.id === one)) add(['asks'], `the model's ask ${one} is missing`, 'add it');
  parametersFit(family.parameters, model.wants, ['parameters'], add);
}

function parametersFit(
  parameters: Readonly<Record<string, Parameter>>,
  wants: Readonly<Record<string, Want>>,
  path: readonly PropertyKey[],
  add: Add,
): void {
  for (const [key, want] of Object.entries(wants)) {
    const found = parameters[key];
    if (found === undefined) add([...path, key], 'the model needs this parameter', `draw ${wantText(want)}`);
    else parameterFits(found, want, [...path, key], add);
  }
  for (const key of Object.keys(parameters))
    if (!(key in wants))
      add([...path, key], 'the model takes no such parameter', `it takes ${Object.keys(wants).join(', ')}`);
}

function parameterFits(found: Parameter, want: Want, path: readonly PropertyKey[], add: Add): void {
  const bad = () => add(path, 'the model takes another kind of parameter here', `draw ${wantText(want)}`);
  if (typeof want === 'string') {
    if (!(want in found)) bad();
    else rangeFits(found, path, add);
  } else if ('rows' in want) {
    if ('list' in found) parametersFit(found.list.of, want.rows, [...path, 'list', 'of'], add);
    else bad();
  } else if (!('choice' in found)) bad();
  else
    for (const [i, word] of found.choice.entries())
      if (!want.includes(word))
        add([...path, 'choice', i], 'the model knows no such word', `use ${want.join(', ')}`);
}

function rangeFits(found: Parameter, path: readonly PropertyKey[], add: Add): void {
  const [kind, { from, to }] = Object.entries(found)[0] as [string, { from: number; to: number }];
  if (from > to) add([...path, kind, 'to'], 'this is below from', 'exchange the two');
  if ('some' in found && (to > found.some.of.length || from < found.some.always.length))
    add([...path, 'some'], 'so many there are not', 'let from and to lie between the needed ones and all');
}

function wantText(want: Want): string {
  if (typeof want === 'string') return `${want}: { … }`;
  return 'rows' in want
    ? `list: { of: { ${Object.keys(want.rows).join(', ')} } }`
    : `choice: [${want.join(', ')}]`;
}

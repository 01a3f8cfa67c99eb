/**
 * A sheet as its file holds it: what content/sheets/ID.yaml says, and what a sheet made on a page carries in a link or
 * a file to devices that have no such content. Lengths are texts. Read by hand, as the files that travel are.
 */
import type { Fault } from '../trade/given.ts';
import { GivenError } from '../trade/given.ts';
import { LONGEST_SHEET_ID, PLAIN_ID, TASK_ID } from '../trade/ids.ts';
import { formatLength, type Ticks, tryLength } from '../trade/length.ts';
import type { Parameter } from './family.ts';
import { faultsIn, hasOnly, isRecord, textOf, type Wants } from './fileFields.ts';
import { type Narrowing, narrowFaults } from './narrow.ts';
import { type SheetRule, sheetRuleFaults } from './passRule/rule.ts';
import type { Practice, Sheet, SheetFamily } from './sheet.ts';

/** The form: plain JSON, and YAML when it is written so. */
export type SheetForm = Readonly<Record<string, unknown>>;

const length = (at: number) => formatLength(at as Ticks, 64);

function parameterForm(parameter: Parameter): unknown {
  if (!('length' in parameter)) return parameter;
  const { from, to, step } = parameter.length;
  return { length: { from: length(from), to: length(to), step: length(step) } };
}

/** A narrowing as it is written, lengths as texts. */
export const narrowForm = (narrow: Narrowing): SheetForm =>
  Object.fromEntries(Object.entries(narrow).map(([name, parameter]) => [name, parameterForm(parameter)]));

export function sheetForm({ id, number, title, tasks, families, rule }: Sheet): SheetForm {
  return {
    id,
    number,
    title,
    tasks,
    families: families.map(({ family, draws, narrow }) => ({
      family,
      draws,
      ...(narrow === undefined ? {} : { narrow: narrowForm(narrow) }),
    })),
    rule,
  };
}

/** Words that YAML, of one edition or another, reads as something else than a text (YAML 1.1 types bool and null). */
const YAML_WORDS = new Set(['true', 'false', 'null', 'yes', 'no', 'on', 'off', 'y', 'n']);
const isPlainInYaml = (text: string): boolean => !YAML_WORDS.has(text) && Number.isNaN(Number(text));

/** The form as a file of content/sheets: JSON's values in YAML's flow style, a line a field, a line a family. */
export function sheetYaml(form: SheetForm): string {
  const flow = (value: unknown): string => {
    if (Array.isArray(value)) return `[${value.map(flow).join(', ')}]`;
    if (isRecord(value))
      return `{ ${Object.entries(value)
        .map(([key, one]) => `${isPlainInYaml(key) ? key : JSON.stringify(key)}: ${flow(one)}`)
        .join(', ')} }`;
    return typeof value === 'string' && PLAIN_ID.test(value) && isPlainInYaml(value)
      ? value
      : JSON.stringify(value);
  };
  return Object.entries(form)
    .map(([key, value]) =>
      key === 'families' && Array.isArray(value)
        ? `families:\n${value.map((one) => `  - ${flow(one)}\n`).join('')}`
        : `${key}: ${flow(value)}\n`,
    )
    .join('');
}

/** Most draws of one family on a sheet, and most of all: every one is drawn when the sheet is opened. */
export const MOST_OF_FAMILY = 20;
export const MOST_ON_SHEET = 200;

const wholeTo = (most: number, message: string): Wants => ({
  good: (value) => Number.isInteger(value) && Number(value) >= 1 && Number(value) <= most,
  message,
  todo: `write a whole number from 1 to ${most}`,
});
const list: Wants = {
  good: (value) => Array.isArray(value) && value.length > 0,
  message: 'this is no list, or an empty one',
  todo: 'write [ … ]',
};
const record: Wants = { good: isRecord, message: 'this is no object', todo: 'write { … }' };
const fields = {
  id: textOf(PLAIN_ID, 'this is no id of a sheet', 'write small letters, digits and -', LONGEST_SHEET_ID),
  number: wholeTo(9999, 'this is no number of a sheet'),
  title: record,
  tasks: list,
  families: list,
  rule: record,
};
const familyFields = {
  family: textOf(PLAIN_ID, 'this is no id of a family', 'write the id of a file of content/scenarios'),
  draws: wholeTo(MOST_OF_FAMILY, 'so many draws of one family are too many, or too few'),
  narrow: { ...record, optional: true as const },
};

const LONGEST_TITLE = 200;

/** What `fields` lets through. */
interface FormFields {
  readonly id: string;
  readonly number: number;
  readonly title: Sheet['title'];
  readonly tasks: readonly unknown[];
  readonly families: readonly unknown[];
  readonly rule: unknown;
}

/**
 * A sheet out of its form, held against the families that are there.
 * @throws {GivenError} every fault of it
 */
export function readSheetForm(given: unknown, { families }: Pick<Practice, 'families'>): Sheet {
  const faults: Fault[] = [...faultsIn(given, fields)];
  if (faults.length > 0 || !isRecord(given)) throw new GivenError(faults);
  const form = given as unknown as FormFields;
  const { id, number, title, tasks, families: rows, rule } = form;
  for (const [i, task] of tasks.entries())
    if (typeof task !== 'string' || !TASK_ID.test(task))
      faults.push({
        field: `tasks[${i}]`,
        value: task,
        message: 'this is no task',
        todo: 'write T and two digits',
      });
  faults.push(...titleFaults(title));
  const read = rows.map((row, i) => readFamily(row, `families[${i}]`, families, faults));
  if (faults.length === 0) {
    const draws = read.reduce((sum, one) => sum + (one?.draws ?? 0), 0);
    faults.push(...tooMany(draws), ...readRule(rule, draws));
  }
  if (faults.length > 0) throw new GivenError(faults);
  return {
    id,
    number,
    title,
    tasks: tasks as readonly string[],
    families: read as readonly SheetFamily[],
    rule: rule as SheetRule,
  };
}

/** A title in each language, the first of them always. */
function titleFaults(title: Readonly<Record<string, unknown>>): readonly Fault[] {
  const todo = 'give it a title of one line, without space at its ends';
  const isTitle = (text: unknown) =>
    typeof text === 'string' && text !== '' && text === text.trim() && text.length <= LONGEST_TITLE;
  return Object.entries({ en: undefined, ...title }).flatMap(([lang, text]): Fault[] => {
    const field = `title.${lang}`;
    if (!/^[a-z]{2}$/.test(lang))
      return [{ field, value: text, message: 'this is no language', todo: 'name it by two small letters' }];
    return isTitle(text) ? [] : [{ field, value: text, message: 'the sheet has no title', todo }];
  });
}

/** What is wrong with so many draws on one sheet. */
export const tooMany = (draws: number): readonly Fault[] =>
  draws <= MOST_ON_SHEET
    ? []
    : [
        {
          field: 'families',
          value: draws,
          message: `${draws} draws are too many for one sheet`,
          todo: `leave at most ${MOST_ON_SHEET} on it`,
        },
      ];

function readFamily(
  row: unknown,
  at: string,
  families: Practice['families'],
  faults: Fault[],
): SheetFamily | undefined {
  const own = faultsIn(row, familyFields, at);
  faults.push(...own);
  if (own.length > 0) return undefined;
  const { family, draws, narrow } = row as {
    family: string;
    draws: number;
    narrow?: Record<string, unknown>;
  };
  const known = families.get(family);
  if (known === undefined) {
    const todo = 'take a newer release of this site, or another family';
    faults.push({ field: `${at}.family`, value: family, message: 'there is no such family here', todo });
    return undefined;
  }
  if (narrow === undefined) return { family, draws };
  const parameters: Record<string, Parameter> = {};
  for (const [name, one] of Object.entries(narrow)) {
    const parameter = readParameter(one);
    if (parameter === undefined)
      faults.push({
        field: `${at}.narrow.${name}`,
        value: one,
        message: 'this narrows nothing',
        todo: 'write length, decimal or whole with from, to and step, or choice: [ … ]',
      });
    else parameters[name] = parameter;
  }
  faults.push(...narrowFaults(known, parameters).map((f) => ({ ...f, field: `${at}.narrow.${f.field}` })));
  return { family, draws, narrow: parameters };
}

function readParameter(given: unknown): Parameter | undefined {
  if (hasOnly(given, ['choice'])) {
    const { choice } = given;
    return Array.isArray(choice) && choice.length > 0 && choice.every((word) => typeof word === 'string')
      ? { choice }
      : undefined;
  }
  if (hasOnly(given, ['length']) && hasOnly(given.length, ['from', 'to', 'step'])) {
    const [from, to, step] = [given.length.from, given.length.to, given.length.step].map((text) =>
      typeof text === 'string' || typeof text === 'number' ? tryLength(text) : undefined,
    );
    return typeof from === 'number' && typeof to === 'number' && typeof step === 'number' && step > 0
      ? { length: { from, to, step } }
      : undefined;
  }
  if (hasOnly(given, ['whole']) && hasOnly(given.whole, ['from', 'to'])) {
    const { from, to } = given.whole;
    return Number.isInteger(from) && Number.isInteger(to)
      ? { whole: { from: from as number, to: to as number } }
      : undefined;
  }
  if (!hasOnly(given, ['decimal']) || !hasOnly(given.decimal, ['from', 'to', 'step'])) return undefined;
  const { from, to, step } = given.decimal;
  const isNumber = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);
  return isNumber(from) && isNumber(to) && isNumber(step) && step > 0
    ? { decimal: { from, to, step } }
    : undefined;
}

function readRule(rule: unknown, draws: number): readonly Fault[] {
  const todo = 'write { need, of }, { bound: … } or { sequential: … }';
  const bad = [{ field: 'rule', value: rule, message: 'this is no pass rule', todo }];
  if (!isRecord(rule)) return bad;
  const numbers = (of: unknown, names: readonly string[]) =>
    hasOnly(of, names) && names.every((name) => typeof of[name] === 'number');
  const form =
    numbers(rule, ['need', 'of']) ||
    (Object.keys(rule).join() === 'bound' && numbers(rule['bound'], ['confidence', 'share'])) ||
    (Object.keys(rule).join() === 'sequential' &&
      numbers(rule['sequential'], ['p0', 'p1', 'alpha', 'beta', 'ceiling']));
  if (!form) return bad;
  return sheetRuleFaults(rule as unknown as SheetRule, draws).map((fault) => ({
    ...fault,
    field: `rule.${fault.field}`,
  }));
}

/** The manual that `--help` prints: of the command, of a group, of a verb. */
import type { Group, Verb } from './verb.ts';

const CALL = 'npm run -s trayhand --';

export function helpOfCommand(groups: readonly Group[]): string {
  return page([
    'trayhand: calculators, practice and the register of a crew that installs narrow channel cable tray.',
    '',
    `${CALL} GROUP VERB …`,
    '',
    ...table(groups.map((g) => [g.name, g.line])),
    '',
    'JSON in from a file or standard input (- or nothing), JSON out on standard output, talk on standard error.',
    'Exit 0: answered. 1: a check found something. 2: bad command or input; "errors" says what to do.',
    'GROUP --help and GROUP VERB --help say more.',
  ]);
}

export function helpOfGroup(group: Group): string {
  return page([
    `${group.name}: ${group.line}`,
    '',
    `${CALL} ${group.name} VERB …`,
    '',
    ...table(group.verbs.map((v) => [v.name, v.line])),
    '',
    `${group.name} VERB --help says more.`,
  ]);
}

export function helpOfVerb(group: Group, verb: Verb): string {
  const options = Object.entries(verb.options ?? {});
  const usage = [
    ...(verb.words ?? []),
    ...(verb.takesInput ? ['[FILE|-]'] : []),
    ...options.map(([name, o]) => {
      const form = `--${name}${o.value === undefined ? '' : ` ${o.value}`}`;
      return `${o.needed ? form : `[${form}]`}${o.many ? '…' : ''}`;
    }),
  ];
  const manual = verb.manual?.() ?? [];
  return page([
    `${group.name} ${verb.name}: ${verb.line}`,
    '',
    [CALL, group.name, verb.name, ...usage].join(' '),
    ...(options.length === 0 ? [] : ['', ...table(options.map(([name, o]) => [`--${name}`, o.line]))]),
    ...(manual.length === 0 ? [] : ['', ...manual]),
  ]);
}

/** Two columns, the first as wide as its longest entry. */
export function table(rows: readonly (readonly [string, string])[]): string[] {
  const width = Math.max(...rows.map(([first]) => first.length));
  return rows.map(([first, second]) => `  ${first.padEnd(width)}  ${second}`);
}

function page(lines: readonly string[]): string {
  return `${lines.join('\n')}\n`;
}

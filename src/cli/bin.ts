#!/usr/bin/env node
/**
 * The command `trayhand GROUP VERB …`: a thin door on the rooms. It finds the group and the verb, prints what comes
 * back as JSON and sets the exit. Each group is a file of this folder, loaded only when it is called for; a new group is its
 * name in the list below and a file that exports `group`.
 */
import { enableCompileCache } from 'node:module';
import { type Fault, GivenError } from '../trade/given.ts';
import { readCall } from './arguments.ts';
import { bad } from './envelope.ts';
import { helpOfCommand, helpOfGroup, helpOfVerb } from './help.ts';
import type { Group, Outcome, Verb } from './verb.ts';

// Keeps compiled code between calls, so that the next one begins sooner.
enableCompileCache();

const GROUPS = ['calc', 'run', 'practice', 'register', 'content'];

async function load(name: string): Promise<Group> {
  const { group } = (await import(`./${name}.ts`)) as { group: Group };
  return group;
}

const asksHelp = (arg: string) => arg === '--help' || arg === '-h';

function pick(field: string, value: string | undefined, known: readonly string[]): GivenError {
  const fault: Fault = {
    field,
    ...(value === undefined ? {} : { value }),
    message: value === undefined ? `the ${field} is missing` : `there is no such ${field}`,
    todo: `name one of ${known.join(', ')}; --help says more`,
  };
  return new GivenError([fault]);
}

async function answer(args: readonly string[]): Promise<string | Outcome> {
  const helps = args.slice(0, args.includes('--') ? args.indexOf('--') : args.length).some(asksHelp);
  const [name, verbName, ...rest] = args.filter((arg) => !helps || !asksHelp(arg));
  if (name === undefined && helps) return helpOfCommand(await Promise.all(GROUPS.map(load)));
  if (name === undefined || !GROUPS.includes(name)) throw pick('group', name, GROUPS);
  const group = await load(name);
  if (verbName === undefined && helps) return helpOfGroup(group);
  const verb: Verb | undefined = group.verbs.find((v) => v.name === verbName);
  if (verb === undefined)
    throw pick(
      'verb',
      verbName,
      group.verbs.map((v) => v.name),
    );
  return helps ? helpOfVerb(group, verb) : verb.run(readCall(verb, rest));
}

function failed(cause: unknown): Outcome {
  if (cause instanceof GivenError) return { json: bad(cause.faults), exit: 2 };
  process.stderr.write(`${cause instanceof Error ? (cause.stack ?? cause.message) : String(cause)}\n`);
  const fault = {
    field: '',
    message: 'the command itself failed',
    todo: 'report it with what was given; it is our fault',
  };
  return { json: bad([fault]), exit: 2 };
}

// A reader that closes early (`| head`) is no failure of ours.
process.stdout.on('error', (cause: NodeJS.ErrnoException) => {
  if (cause.code !== 'EPIPE') throw cause;
});

const outcome = await answer(process.argv.slice(2)).catch(failed);
if (typeof outcome === 'string') process.stdout.write(outcome);
else {
  process.stdout.write(`${JSON.stringify(outcome.json)}\n`);
  process.exitCode = outcome.exit;
}

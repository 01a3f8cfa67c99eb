/** A verb called in this process: what the command would print, and its exit. */
import { readCall } from '../../src/cli/arguments.ts';
import { bad } from '../../src/cli/envelope.ts';
import type { Group } from '../../src/cli/verb.ts';
import { GivenError } from '../../src/trade/given.ts';
import type { Printed } from './command.ts';

export interface Called {
  readonly exit: number;
  readonly one: Printed;
}

export async function inProcess(group: Group, [name, ...args]: readonly string[]): Promise<Called> {
  const verb = group.verbs.find((v) => v.name === name);
  if (verb === undefined) throw new Error(`no verb ${name}`);
  const printed = (json: unknown): Printed => JSON.parse(JSON.stringify(json));
  try {
    const { json, exit } = await verb.run(readCall(verb, args));
    return { exit, one: printed(json) };
  } catch (cause) {
    if (!(cause instanceof GivenError)) throw cause;
    return { exit: 2, one: printed(bad(cause.faults)) };
  }
}

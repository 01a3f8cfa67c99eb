/** Turning what a room or the device refuses into faults that a page can show beside its fields. */
import { NoRegister } from '../register/judged.ts';
import { type Fault, GivenError } from '../trade/given.ts';
import type { Tell } from './speak.ts';
import type { Attempt } from './tried.ts';

/** The faults of a refusal. A device that fails (no storage, no room) is one fault of the field `device`. */
export function faultsFrom(error: unknown, tell: Tell): readonly Fault[] {
  if (error instanceof GivenError) return error.faults;
  if (error instanceof NoRegister)
    return [{ field: 'file', message: tell('file.noBegin'), todo: tell('file.giveRegister') }];
  const why = error instanceof Error ? error.message : String(error);
  return [{ field: 'device', message: tell('file.failed', { why }), todo: tell('file.tryAgain') }];
}

/** Does a thing and says what came of it; nothing is thrown. */
export async function attempt<T>(tell: Tell, act: () => T | Promise<T>): Promise<Attempt<T>> {
  try {
    return { good: true, value: await act() };
  } catch (error) {
    return { good: false, faults: faultsFrom(error, tell) };
  }
}

/** The form of every answer: `ok`, then the result with its working and sources, or every fault. */
import type { Answered, Say, Source, Step } from '../trade/answer.ts';
import type { Fault } from '../trade/given.ts';

export interface Good {
  readonly ok: true;
  readonly result: unknown;
  readonly steps: readonly {
    readonly say: string;
    readonly value?: string | number;
    readonly unit?: string;
  }[];
  readonly sources: readonly Source[];
}

export interface Bad {
  readonly ok: false;
  readonly errors: readonly (Fault & { readonly file?: string })[];
}

export type Envelope = Good | Bad;

/** An answer without working. */
export function plain(result: unknown): Good {
  return { ok: true, result, steps: [], sources: [] };
}

/** An answer of a calculation, its sentences in words. A result that carries `why` says it in words too. */
export function good(answered: Answered<object>, speak: (say: Say) => string): Good {
  const { result, steps, sources } = answered;
  const said = (step: Step) => ({
    say: speak(step),
    ...(step.value === undefined ? {} : { value: step.value }),
    ...(step.unit === undefined ? {} : { unit: step.unit }),
  });
  return { ok: true, result: inWords(result, speak), steps: steps.map(said), sources };
}

/** `why` holds the sentences of one reason or more; on paper they are one text. */
function inWords(result: object, speak: (say: Say) => string): object {
  if (!('why' in result) || !Array.isArray(result.why)) return result;
  return { ...result, why: (result.why as Say[]).map(speak).join(' ') };
}

export function bad(errors: Bad['errors']): Bad {
  return { ok: false, errors: errors.map(told) };
}

function told(fault: Bad['errors'][number]): Bad['errors'][number] {
  const { value, ...rest } = fault;
  return carried(value) ? fault : rest;
}

/** Whether JSON can carry a value as it is: not a number beyond all numbers, nor lists in lists without end. */
function carried(value: unknown): boolean {
  try {
    const text = JSON.stringify(value);
    return text !== undefined && (text !== 'null' || value === null);
  } catch {
    return false;
  }
}

/** One step of a job: its parts answered together, and judged together. */
import type { JobAsk, PartAsk } from '../family.ts';
import type { Answer } from '../model.ts';
import { type AnyKind, type Asked, type Kind, type Unread, unread } from './kind.ts';

export type Parts = { readonly [part: string]: Answer };

/** Whether a part was answered and is this one. */
export function partHolds(kind: AnyKind, part: PartAsk, given: Parts, wanted: Parts): boolean {
  const [one, other] = [given[part.id], wanted[part.id]];
  return one !== undefined && other !== undefined && kind.same(part, one, other);
}

/** The kind of a job's step, made over the kinds of its parts. */
export function jobOf(kindOf: (ask: PartAsk) => AnyKind): Kind<JobAsk, Parts> {
  const samePart = (part: PartAsk, given: Parts, wanted: Parts) =>
    partHolds(kindOf(part), part, given, wanted);
  const every = (ask: JobAsk, holds: (part: PartAsk) => boolean) => ask.parts.every(holds);
  const sameParts = (ask: JobAsk, given: Parts, wanted: Parts) =>
    every(ask, (part) => samePart(part, given, wanted));

  return {
    read: (ask, value, asked: Asked) => {
      const todo = `write {part: answer}; the parts are ${ask.parts.map(({ id }) => id).join(', ')}`;
      if (typeof value !== 'object' || value === null || Array.isArray(value))
        return unread(value, 'this is no step of a job', todo);
      const answers: Record<string, Answer> = {};
      const faults: Unread[] = [];
      for (const [id, given] of Object.entries(value)) {
        const part = ask.parts.find((one) => one.id === id);
        const read =
          part === undefined
            ? unread(given, 'this is no part of the step', todo)
            : kindOf(part).read(part, given, asked);
        if ('unread' in read) faults.push(...read.unread.map((one) => ({ ...one, at: `.${id}${one.at}` })));
        else if (read.answer !== null) answers[id] = read.answer;
      }
      if (faults.length > 0) return { unread: faults };
      return { answer: Object.keys(answers).length === 0 ? null : answers };
    },
    same: sameParts,
    near: (ask, given, wanted) =>
      !sameParts(ask, given, wanted) &&
      every(ask, (part) => {
        const [one, other] = [given[part.id], wanted[part.id]];
        if (one === undefined || other === undefined) return false;
        return samePart(part, given, wanted) || kindOf(part).near(part, one, other);
      }),
    // One part that tells them apart is enough.
    apart: (ask, one, other) =>
      ask.parts.some((part) => {
        const [a, b] = [one[part.id], other[part.id]];
        return a === undefined || b === undefined || kindOf(part).apart(part, a, b);
      }),
    faults: (ask, answer, right, asked) =>
      ask.parts.flatMap((part) => {
        const of = answer[part.id];
        if (of === undefined) return [`no answer to part ${part.id}`];
        return kindOf(part)
          .faults(part, of, right, asked)
          .map((cause) => `${part.id}: ${cause}`);
      }),
    /** Every part given is the mistake's or the right one, and at least one is the mistake's alone. */
    explains: (ask, given, mistaken, right) => {
      const parts = ask.parts.filter(({ id }) => given[id] !== undefined);
      const wrong = parts.filter((part) => !samePart(part, given, right));
      const ofMistake = wrong.filter((part) => samePart(part, given, mistaken));
      if (ofMistake.length === 0) return null;
      return ofMistake.length === wrong.length ? 'whole' : 'part';
    },
    show: (ask, showing) => ({
      parts: ask.parts.map((part) => ({
        id: part.id,
        kind: part.kind,
        prompt: showing.textOf({ text: part.prompt }),
        ...kindOf(part).show(part, showing),
      })),
    }),
  };
}

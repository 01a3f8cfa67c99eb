/** "May … do it?" in words: the answer first, then what decides it, each reason with its entry. Pure. */
import type { Variant } from '../register/bodies.ts';
import type { May, MayAnswer, MayAsked } from '../register/may.ts';
import { fullVariant, taskOf } from '../register/taskMap.ts';
import type { Say } from '../trade/answer.ts';
import { type CrewSource, type EntryLink, entryLink } from './crewLines.ts';
import { speakDays } from './days.ts';
import { type SiteKey, saidOr } from './speak.ts';
import { variantText } from './variants.ts';
import { momentText } from './zoned.ts';

export interface MayView {
  /** Task, variant, from when to when. */
  readonly label: string;
  /** Task and variant alone. */
  readonly way: string;
  readonly answer: MayAnswer;
  readonly word: string;
  readonly reasons: readonly { readonly text: string; readonly entry: EntryLink | undefined }[];
}

const words = {
  yes: 'person.answer-yes',
  no: 'person.answer-no',
  'not enough evidence': 'person.answer-not-enough-evidence',
} as const satisfies Readonly<Record<MayAnswer, SiteKey>>;

/** The answer's word alone. */
export const mayWord = (answer: MayAnswer, { tell }: Pick<CrewSource, 'tell'>): string => tell(words[answer]);

/** Task with its way, every pair said. */
export function taskWay({ map, speak, tell }: CrewSource, id: string, variant: Variant = {}): string {
  const task = taskOf(map, id);
  const way = task === undefined ? '' : variantText(task, fullVariant(task, variant), speak);
  return way === '' ? id : tell('person.taskWay', { task: id, way });
}

/** A saying that speaks of a ticket by its id, with the ticket's name beside it where these pages know it. */
function ticketNamed(say: Say, { speak, tell }: CrewSource): Say {
  const ticket = say.values?.['ticket'];
  const name = typeof ticket === 'string' ? saidOr(speak, `${ticket}.name`, '') : '';
  if (typeof ticket !== 'string' || name === '') return say;
  return { ...say, values: { ...say.values, ticket: tell('person.ticket', { ticket, name }) } };
}

export function mayView(
  source: CrewSource,
  asked: MayAsked,
  { answer, reasons }: May,
  job?: string,
): MayView {
  const { judged, speak, tell } = source;
  const { zone } = judged.view;
  const way = taskWay(source, asked.task, asked.variant);
  const values = {
    task: way,
    from: momentText(tell, zone, asked.from),
    to: momentText(tell, zone, asked.to),
  };
  return {
    label: job === undefined ? tell('person.mayAsked', values) : tell('person.mayJob', { ...values, job }),
    way,
    answer,
    word: mayWord(answer, source),
    reasons: reasons.map(({ say, entry }) => ({
      text: speakDays(ticketNamed(say, source), speak, tell),
      entry: entry === null ? undefined : entryLink(source, entry),
    })),
  };
}

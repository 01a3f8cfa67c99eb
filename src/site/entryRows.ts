/**
 * Entries as a page shows them: what was signed, by whom, when it was seen and entered, whether it holds, and its body.
 * Every entry that is named anywhere leads to its row. Pure.
 */
import { readAnswersFile } from '../practice/sheetFiles.ts';
import type { Bodies } from '../register/bodies.ts';
import type { Json } from '../register/canonical.ts';
import { type Circumstances, circumstancesOf, measuresOf } from '../register/circumstances.ts';
import { samePerson } from '../register/demands.ts';
import type { Judged } from '../register/judged.ts';
import type { Placed } from '../register/order.ts';
import { fullVariant, variantText as plainText, taskOf } from '../register/taskMap.ts';
import { type CrewSource, entryAnchor, witnessOf } from './crewLines.ts';
import { dayText, shortDay } from './dates.ts';
import { speakDays } from './days.ts';
import { shortKey } from './shortKey.ts';
import { type SiteKey, type Speak, saidOr } from './speak.ts';
import { valueName, variantText } from './variants.ts';
import { momentText } from './zoned.ts';

export interface EntryRow {
  readonly id: string;
  readonly short: string;
  /** Id of the row on the page. */
  readonly anchor: string;
  readonly what: string;
  /** Day seen, where it is of something seen. */
  readonly seen: string;
  readonly entered: string;
  readonly by: string;
  readonly byName: string;
  /** Whether it holds, and what later entries made of it; the first is about the signature. */
  readonly holds: readonly string[];
  /** Number, device, key. */
  readonly full: string;
  /** What else was signed, a line each. */
  readonly facts: readonly string[];
  /** Critical points and measures under their headings. */
  readonly lists: readonly { readonly name: string; readonly lines: readonly string[] }[];
}

/** Entries about a person as known, the last first; those that count for nothing are among them and say so. */
export function entryRows(source: CrewSource, person: string): readonly EntryRow[] {
  const about = source.judged.view.list.filter(({ header }) => header.about === person);
  return about.map((entry) => entryRow(source, entry, about)).reverse();
}

interface Told {
  readonly what: string;
  readonly seen?: string;
  readonly facts?: readonly string[];
  readonly lists?: EntryRow['lists'];
}

/** `about`: entries about the same person, in order: what acts on an entry is among them. */
function entryRow(source: CrewSource, entry: Placed, about: readonly Placed[]): EntryRow {
  const { judged, tell } = source;
  const { header, id } = entry;
  const { short: by, name: byName } = witnessOf(source, entry);
  const told = toldOf(source, entry);
  return {
    id,
    short: shortKey(id),
    anchor: entryAnchor(shortKey(id)),
    what: told.what,
    seen: told.seen ?? '',
    entered: shortDay(tell, judged.view.dayIn(judged.view.zone, entry.entered)),
    by,
    byName,
    holds: holdsOf(source, entry, about),
    full: tell('entryRow.full', {
      id,
      number: header.seq,
      device: header.device,
      key: shortKey(header.signer),
    }),
    facts: told.facts ?? [],
    lists: told.lists ?? [],
  };
}

/** Bytes whose signature fails are in no order: what stands here was signed as it is. */
function holdsOf(
  { judged, speak, tell }: CrewSource,
  entry: Placed,
  about: readonly Placed[],
): readonly string[] {
  const { view, authority } = judged;
  const lines = [tell('entryRow.holds')];
  const refused = authority.voids.get(entry.id);
  if (refused !== undefined) {
    lines.push(tell('entryRow.countsNot', { why: speakDays(refused.say, speak, tell) }));
  }
  const doubt = judged.doubt(entry);
  if (doubt !== undefined) lines.push(tell('entryRow.doubt', { why: speakDays(doubt, speak, tell) }));
  for (const later of about) {
    if (!later.header.target.includes(entry.id) || !judged.counts(later)) continue;
    const { kind } = later.header;
    const made = Object.hasOwn(lateActs, kind) ? lateActs[kind] : undefined;
    if (made !== undefined) {
      lines.push(
        tell(made, {
          entry: shortKey(later.id),
          day: dayText(tell, view.dayIn(view.zone, later.entered)),
        }),
      );
    }
  }
  return lines;
}

const lateActs: Readonly<Record<string, SiteKey>> = {
  withdraw: 'entryRow.withdrawn',
  second: 'entryRow.seconded',
  correct: 'entryRow.corrected',
};

type Teller<K extends keyof Bodies> = (body: Bodies[K], source: CrewSource, entry: Placed) => Told;

const targetOf = ({ header }: Placed): string => shortKey(header.target[0] ?? '');

const tellers: { readonly [K in keyof Bodies]?: Teller<K> } = {
  check: checkTold,
  second: (_, { tell }, entry) => ({ what: tell('entryRow.second', { entry: targetOf(entry) }) }),
  withdraw: ({ why }, { tell }, entry) => ({
    what: tell('entryRow.withdraw', { entry: targetOf(entry), why }),
  }),
  correct: ({ why, evidence }, source, entry) => ({
    what: source.tell('entryRow.correct', { entry: targetOf(entry), why }),
    facts: evidenceTold(evidence, source, entry),
  }),
  ticket: ({ ticket, issuer, number, until }, { speak, tell }) => ({
    what: tell('entryRow.ticket', {
      ...{ ticket, issuer, number },
      name: saidOr(speak, `${ticket}.name`, ''),
      day: dayText(tell, until),
    }),
  }),
  assigned: ({ job, from, to, override }, { judged, tell }) => {
    const { zone } = judged.view;
    const values = {
      job,
      from: momentText(tell, zone, Date.parse(from)),
      to: momentText(tell, zone, Date.parse(to)),
    };
    return {
      what:
        override === null
          ? tell('entryRow.assigned', values)
          : tell('entryRow.assignedOver', { ...values, override }),
    };
  },
  appoint: ({ tasks, on }, { tell }) => ({
    what: tell('entryRow.appoint', {
      tasks: tasks === 'all' ? tell('entryRow.allTasks') : tasks.join(', '),
      day: dayText(tell, on),
    }),
  }),
  retire: ({ why }, { tell }, { header }) => ({
    what: tell('entryRow.retire', { key: shortKey(header.key ?? ''), why }),
    facts:
      header.target.length === 0
        ? [tell('entryRow.retireNothing')]
        : header.target.map((id) => tell('entryRow.retireAfter', { entry: shortKey(id) })),
  }),
  settle: ({ why }, { tell }, entry) => ({
    what: tell('entryRow.settle', { entry: targetOf(entry), why }),
  }),
  'take-over': ({ why }, { tell }) => ({ what: tell('entryRow.takeOver', { why }) }),
  erase: (_, { tell }) => ({ what: tell('entryRow.erase') }),
  begin: (_, { tell }) => ({ what: tell('entryRow.begin') }),
};

function toldOf(source: CrewSource, entry: Placed): Told {
  const { judged, tell } = source;
  const { kind } = entry.header;
  const other = tell('entryRow.other', { kind });
  // Says all it says in its header: it has no body.
  if (kind === 'succeed') {
    return { what: tell('entryRow.succeed', { key: shortKey(entry.header.key ?? '') }) };
  }
  if (!Object.hasOwn(tellers, kind)) return { what: other };
  const teller = (tellers as Readonly<Record<string, Teller<never>>>)[kind] as Teller<never>;
  const state = judged.authority.body(entry, kind as keyof Bodies);
  if (state.state === 'held') return teller(state.body as never, source, entry);
  const facts: Readonly<Record<Exclude<typeof state.state, 'held'>, readonly string[]>> = {
    erased: [tell('entryRow.bodyErased')],
    missing: [tell('entryRow.bodyMissing')],
    altered: [tell('entryRow.bodyAltered')],
    unreadable: state.state === 'unreadable' ? [tell('entryRow.bodyUnreadable', { why: state.why })] : [],
    none: [],
  };
  return { what: other, facts: facts[state.state] };
}

function checkTold(body: Bodies['check'], source: CrewSource, entry: Placed): Told {
  const { map, speak, tell } = source;
  const task = taskOf(map, body.task);
  const outcome = tell(body.stopped ? 'entryRow.stopped' : `entryRow.outcome-${body.outcome}`);
  const did = tell('entryRow.did', {
    outcome,
    manner: tell(`witness.did-${body.manner}`),
    help: tell(`witness.did-${body.help}`),
  });
  const way =
    task === undefined ? plainText(body.variant) : variantText(task, fullVariant(task, body.variant), speak);
  const points = body.points.map(({ point, how }) => ({
    how: tell(`entryRow.${how}Point`),
    point: saidOr(speak, `${body.task}.critical-${point}`, point),
  }));
  const measured = measuresOf(body.measured).map(({ what, wanted, got, tool }) =>
    tool === null
      ? tell('entryRow.measure', { what, wanted, got })
      : tell('entryRow.measureTool', { what, wanted, got, tool }),
  );
  return {
    what:
      way === ''
        ? tell('entryRow.check', { task: body.task, outcome: did })
        : tell('entryRow.checkWay', { task: body.task, way, outcome: did }),
    seen: shortDay(tell, body.on),
    facts: [
      tell('entryRow.revision', { revision: body.revision }),
      tell('entryRow.sightLine', {
        sight: tell(body.inSight ? 'entryRow.inSight' : 'entryRow.outOfSight'),
      }),
      ...takenTold(circumstancesOf(body.measured), speak, tell),
      ...evidenceTold(body.evidence, source, entry),
    ],
    lists: [
      {
        name: tell('entryRow.points'),
        lines: points.map(({ point, how }) => tell('entryRow.point', { point, how })),
      },
      { name: tell('entryRow.measured'), lines: measured },
    ].filter(({ lines }) => lines.length > 0),
  };
}

/** How the look was taken, where the witness said so. */
const takenTold = (
  { shift, place, paper }: Circumstances,
  speak: Speak,
  tell: CrewSource['tell'],
): readonly string[] => [
  ...(shift === null ? [] : [tell(`entryRow.shift-${shift}`)]),
  ...(place === null ? [] : [tell('entryRow.place', { place: valueName('place', place, speak) })]),
  ...(paper ? [tell('entryRow.paper')] : []),
];

const devicesBySigner = new WeakMap<Judged, ReadonlyMap<string, ReadonlySet<string>>>();

/** Names of the devices of each key, as far as its entries are here; gone through once a register. */
function devicesIn(judged: Judged): ReadonlyMap<string, ReadonlySet<string>> {
  const known = devicesBySigner.get(judged);
  if (known !== undefined) return known;
  const found = new Map<string, Set<string>>();
  for (const { header } of judged.view.list) {
    found.set(header.signer, (found.get(header.signer) ?? new Set()).add(header.device));
  }
  devicesBySigner.set(judged, found);
  return found;
}

/** Whether a device has the name of one that a signer used, with any key of his. */
const isNamedAsOwn = (judged: Judged, signer: string, device: string): boolean =>
  [...devicesIn(judged)].some(
    ([key, names]) => names.has(device) && samePerson(judged.authority, key, signer),
  );

/** The answers that go with a check: anyone can work them out from sheet and bench, so where they were given is said. */
function evidenceTold(evidence: Json, { judged, tell }: CrewSource, { header }: Placed): readonly string[] {
  if (evidence === null) return [tell('entryRow.wordOnly')];
  try {
    const { sheet, bench, device } = readAnswersFile(evidence);
    // A file of answers names a device and no key: a name alike is all that can be known.
    const own = isNamedAsOwn(judged, header.signer, device) ? [tell('entryRow.ownDevice')] : [];
    return [tell('entryRow.answers', { sheet, bench, device }), ...own];
  } catch {
    return [tell('entryRow.answersOdd')];
  }
}

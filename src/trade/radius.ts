/** The smallest radius that a cable may be bent to, measured to the inner edge of the bend. */
import type { Answered, Say, Source, Step } from './answer.ts';
import { type Edition, NEWEST, type PerEdition } from './editions.ts';
import { figure } from './figure.ts';
import { type Fault, GivenError } from './given.ts';
import { atMost, HAIR } from './hair.ts';

/** Kinds of cable that are told apart here. */
export const RADIUS_CABLES = [
  'TC',
  'MC interlocked',
  'MC smooth',
  'MC shielded',
  'ITC',
  'PLTC',
  'over 1000 V',
] as const;
export type RadiusCable = (typeof RADIUS_CABLES)[number];

/** The rule of one kind of cable; what is null the code does not state. */
export interface RadiusRule {
  /** Section as it is cited; null where no section speaks of it. */
  readonly section: PerEdition<string> | null;
  readonly sources: PerEdition<Source> | null;
  /** Multiples of the cable's diameter, by diameters rising; the last has no end. */
  readonly plain: readonly { readonly upToIn: number | null; readonly multiple: number }[] | null;
  /** Multiple of the cable's diameter under a metallic shield. */
  readonly shielded: number | null;
  /** Conductors each shielded: the greater of a multiple of one conductor and one of the cable. */
  readonly conductors: { readonly ofConductor: number; readonly ofCable: number } | null;
}

export type RadiusTable = Readonly<Record<RadiusCable, RadiusRule>>;

export interface RadiusGiven {
  readonly cable: RadiusCable;
  /** Outside diameter, above 0. */
  readonly odIn: number;
  /** A metallic shield lies over all of it. */
  readonly shielded?: boolean | undefined;
  /** Over one shielded conductor, above 0, not above the cable's own. */
  readonly conductorOdIn?: number | undefined;
  readonly edition?: Edition | undefined;
}

export interface RadiusResult {
  /** The multiple that governs: of the cable's diameter, or of the conductor's where that asks for more. */
  readonly multiple: number | null;
  /** To the inner edge. */
  readonly radiusIn: number | null;
  /** Section as it is cited; null where none speaks of it. */
  readonly table: string | null;
  readonly refer: boolean;
  /** Why it is referred. */
  readonly why?: readonly Say[];
}

interface Found {
  readonly multiple: number;
  readonly radiusIn: number;
  readonly steps: readonly Step[];
}

/** @throws {GivenError} `conductorOdIn` missing where the rule goes by it, or above the cable's diameter */
export function radius(given: RadiusGiven, table: RadiusTable): Answered<RadiusResult> {
  const { cable, odIn, conductorOdIn, edition = NEWEST } = given;
  const rule = table[cable];
  const fault = conductorFault(given, goesByConductor(rule));
  if (fault !== null) throw new GivenError([fault]);
  const section = rule.section?.[edition] ?? null;
  const sources = rule.sources === null ? [] : [rule.sources[edition]];
  const found =
    conductorOdIn !== undefined && rule.conductors !== null
      ? byConductor(odIn, conductorOdIn, rule.conductors)
      : byCable(given, rule);
  if (found === null) {
    const why: Say[] = [
      section === null
        ? { say: 'radius.silent', values: { cable } }
        : { say: 'radius.noFigure', values: { cable, section } },
      { say: 'radius.ask' },
    ];
    return {
      result: { multiple: null, radiusIn: null, table: section, refer: true, why },
      steps: why,
      sources,
    };
  }
  const { multiple, radiusIn } = found;
  return {
    result: { multiple, radiusIn, table: section, refer: false },
    steps: [
      ...found.steps,
      { say: 'radius.inside', values: { section: section ?? cable }, value: radiusIn, unit: 'in' },
      ...(given.shielded === true && rule.shielded === null && conductorOdIn === undefined
        ? [{ say: 'radius.shieldElsewhere' }]
        : []),
      { say: 'radius.pulled' },
    ],
    sources,
  };
}

/** Whether nothing can be said of a kind of cable without the diameter over one of its conductors. */
export const goesByConductor = ({ conductors, plain }: RadiusRule): boolean =>
  conductors !== null && plain === null;

/** What is wrong with the conductor's diameter for this kind of cable, or null. */
export function conductorFault(
  { cable, odIn, conductorOdIn }: Pick<RadiusGiven, 'cable' | 'conductorOdIn'> & { readonly odIn?: number },
  needed: boolean,
): Fault | null {
  const field = 'conductorOdIn';
  if (needed && conductorOdIn === undefined)
    return {
      field,
      message: `${cable} goes by the diameter over one shielded conductor too`,
      todo: 'measure one conductor over its shield, and give it in inches',
    };
  if (conductorOdIn !== undefined && odIn !== undefined && !atMost(conductorOdIn, odIn))
    return {
      field,
      value: conductorOdIn,
      message: 'one conductor is thicker than the cable it is in',
      todo: 'look whether the two diameters are exchanged',
    };
  return null;
}

function byConductor(odIn: number, conductorIn: number, of: NonNullable<RadiusRule['conductors']>): Found {
  const [fromConductor, fromCable] = [of.ofConductor * conductorIn, of.ofCable * odIn];
  const conductorGoverns = fromConductor >= fromCable - HAIR;
  const values = { conductor: figure(conductorIn), od: figure(odIn) };
  return {
    multiple: conductorGoverns ? of.ofConductor : of.ofCable,
    radiusIn: Math.max(fromConductor, fromCable),
    steps: [
      {
        say: 'radius.ofConductor',
        values: { ...values, multiple: of.ofConductor },
        value: fromConductor,
        unit: 'in',
      },
      { say: 'radius.ofCable', values: { ...values, multiple: of.ofCable }, value: fromCable, unit: 'in' },
      { say: conductorGoverns ? 'radius.conductorGoverns' : 'radius.cableGoverns' },
    ],
  };
}

function byCable(
  { odIn, shielded = false }: RadiusGiven,
  { plain, shielded: under }: RadiusRule,
): Found | null {
  const wraps = shielded && under !== null;
  const multiple = wraps
    ? under
    : plain?.find((row) => row.upToIn === null || atMost(odIn, row.upToIn))?.multiple;
  if (multiple === undefined) return null;
  const say = wraps ? 'radius.underShield' : 'radius.plain';
  return {
    multiple,
    radiusIn: multiple * odIn,
    steps: [{ say, values: { multiple, od: figure(odIn) }, value: multiple * odIn, unit: 'in' }],
  };
}

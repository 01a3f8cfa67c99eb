/**
 * The fields of everything that stands on a run, as data: one form shows them all. Names are those of the run's JSON; kinds
 * of entry, and how they are read, are those of the calculators (`calculators/fields.ts`).
 */
import type { Catalogue } from '../../run/catalogue.ts';
import type { Run } from '../../run/types.ts';
import { EDITIONS } from '../../trade/fillTables.ts';
import { SIZES } from '../../trade/jumper.ts';
import { RADIUS_CABLES } from '../../trade/radius.ts';
import type { ChoiceField, LengthField, Option, PlainField } from '../calculators/fields.ts';
import type { SiteKey } from '../speak.ts';

/** Two lengths that are given together or not at all. */
export interface PairField {
  readonly kind: 'pair';
  readonly label: SiteKey;
  readonly optional?: true;
}
export type Field = PlainField | PairField;
/** By name, in the order in which they are asked. */
export type RunFields = Readonly<Record<string, Field>>;

const said = (group: string, values: readonly string[]): readonly Option[] =>
  values.map((value) => ({ value, label: `yourRun.${group}-${value}` as SiteKey }));
const plain = (values: readonly (string | number)[]): readonly Option[] => values.map((value) => ({ value }));

const choice = (label: SiteKey, options: readonly Option[]): ChoiceField => ({
  kind: 'choice',
  label,
  options,
  none: 'yourRun.unsaid',
});
const length = (label: SiteKey, scale: LengthField['scale'] = 'feet'): LengthField => ({
  kind: 'length',
  label,
  scale,
  from: 'from 0',
});
const maybe = <F extends Field>(field: F): F & { readonly optional: true } => ({ ...field, optional: true });

const YES: readonly Option[] = [{ value: true, label: 'yourRun.yes' }];
const YES_NO: readonly Option[] = [...YES, { value: false, label: 'yourRun.no' }];

const bonding: RunFields = {
  bare: maybe(choice('yourRun.bare', YES_NO)),
  jumper: maybe(choice('yourRun.jumper', [{ value: null, label: 'yourRun.noJumper' }, ...plain(SIZES)])),
};
const joint = choice('yourRun.joint', said('joint', ['socketed', 'butt', 'expansion', 'free']));
const onLeg = ({ legs }: Run) => choice('yourRun.onLeg', plain(legs.map(({ id }) => id)));
/** Legs that nothing goes on from, and any other that an end was put on: that is at fault, and can be mended. */
const onLastLeg = ({ legs, ends = [] }: Run) => {
  const gone = new Set(legs.map(({ from }) => from.replace(/:(?:left|right)$/, '')));
  const given = new Set(ends.map(({ leg }) => leg));
  const ids = legs.map(({ id }) => id).filter((id) => !gone.has(id) || given.has(id));
  return choice('yourRun.onLeg', plain(ids));
};
const at = length('yourRun.at');

export const startFields: RunFields = {
  kind: choice('yourRun.startKind', said('kind', ['ladder', 'tray', 'free'])),
  joint,
  ...bonding,
};

export const legFields: RunFields = {
  length: length('yourRun.length'),
  onEdge: maybe(choice('yourRun.onEdge', YES)),
  barrier: maybe(choice('yourRun.barrier', YES)),
  keeps: maybe(choice('yourRun.keeps', said('keeps', ['left', 'centre', 'right']))),
  ...bonding,
};

export const limitFields: RunFields = {
  maxSpan: maybe(length('yourRun.maxSpan')),
  edition: maybe(choice('yourRun.edition', plain(EDITIONS))),
};

export const stockFields: RunFields = {
  stock: maybe(length('yourRun.stock')),
  kerf: maybe(length('yourRun.kerf', 'inches')),
};

export const tempFields: RunFields = {
  lowF: { kind: 'temperature', label: 'yourRun.lowF' },
  highF: { kind: 'temperature', label: 'yourRun.highF' },
  nowF: { kind: 'temperature', label: 'yourRun.nowF' },
};

export type ListName = 'ends' | 'joints' | 'supports' | 'cables' | 'places' | 'marks';
export const LISTS: readonly ListName[] = ['ends', 'cables', 'joints', 'supports', 'places', 'marks'];

/** Fields of the rows of each list. */
export function listFields(list: ListName, run: Run, catalogue: Catalogue): RunFields {
  return LIST_FIELDS[list](run, catalogue);
}

/** Joint items of the widths that the run may have. */
function jointItems(catalogue: Catalogue): readonly Option[] {
  const kinds = ['sleeve', 'plate', 'expansion', 'hinge'];
  return [...catalogue.values()].flatMap(({ id, kind }) => (kinds.includes(kind) ? [{ value: id }] : []));
}

const LIST_FIELDS: Readonly<Record<ListName, (run: Run, catalogue: Catalogue) => RunFields>> = {
  ends: (run) => ({
    leg: onLastLeg(run),
    kind: choice('yourRun.endKind', said('kind', ['free', 'instrument', 'tray'])),
    joint,
    open: maybe(length('yourRun.open')),
    ...bonding,
  }),
  joints: (run, catalogue) => ({
    leg: onLeg(run),
    at,
    kind: choice('yourRun.jointKind', said('joint', ['socketed', 'butt', 'hinged', 'expansion', 'gap'])),
    gap: maybe(length('yourRun.gap', 'inches')),
    insertions: { kind: 'pair', label: 'yourRun.insertions', optional: true },
    item: maybe(choice('yourRun.item', jointItems(catalogue))),
    hole: maybe(choice('yourRun.hole', said('hole', ['small', 'large']))),
    ...bonding,
  }),
  supports: (run) => ({
    leg: onLeg(run),
    at,
    way: choice('yourRun.way', said('way', ['horizontal', 'vertical'])),
    hold: choice('yourRun.hold', said('hold', ['clamp', 'guide', 'load'])),
  }),
  cables: ({ legs }) => ({
    id: { kind: 'words', label: 'yourRun.cableId' },
    type: choice('yourRun.type', [...plain(RADIUS_CABLES), { value: 'tube', label: 'yourRun.tube' }]),
    odIn: { kind: 'size', label: 'yourRun.odIn', bounds: { above: 0 } },
    lbPerFt: { kind: 'number', label: 'yourRun.lbPerFt', bounds: { from: 0 }, as: 'lbPerFt' },
    count: { kind: 'count', label: 'yourRun.count', from: 1 },
    make: choice('yourRun.make', said('make', ['multiconductor', 'single'])),
    use: choice('yourRun.use', said('use', ['power', 'signal', 'air'])),
    deviceA: maybe({ kind: 'number', label: 'yourRun.deviceA', bounds: { above: 0 }, as: 'amperes' }),
    shielded: maybe(choice('yourRun.shielded', YES)),
    side: maybe(choice('yourRun.side', said('side', ['left', 'right']))),
    to: choice('yourRun.to', plain(legs.map(({ id }) => id))),
  }),
  places: (run) => ({ leg: onLeg(run), at: { kind: 'lengths', label: 'yourRun.placesAt' } }),
  marks: (run) => ({ leg: onLeg(run), at, kind: choice('yourRun.markKind', said('mark', ['step'])) }),
};

/** The fields of everything that stands on a run, as data: one form shows them all. Names are those of the run's JSON. */
import type { Catalogue } from '../../run/catalogue.ts';
import type { Run } from '../../run/types.ts';
import { EDITIONS } from '../../trade/fillTables.ts';
import { SIZES } from '../../trade/jumper.ts';
import { RADIUS_CABLES } from '../../trade/radius.ts';
import type { SiteKey } from '../speak.ts';

/** A choice: its value in the run, and its words; without a key the value is its own word. */
export interface Option {
  readonly value: unknown;
  readonly key?: SiteKey;
}

interface Named {
  readonly name: string;
  readonly label: SiteKey;
  readonly optional?: true;
}

export type Field = Named &
  (
    | { readonly kind: 'length' | 'lengths' | 'pair' | 'text' }
    /** `above`: only greater numbers are read; `whole`: only whole ones. */
    | { readonly kind: 'number'; readonly above?: number; readonly whole?: true }
    | { readonly kind: 'leg' }
    | { readonly kind: 'choice'; readonly options: readonly Option[] }
  );

const options = (group: string, values: readonly string[]): readonly Option[] =>
  values.map((value) => ({ value, key: `yourRun.${group}-${value}` as SiteKey }));

const YES_NO: readonly Option[] = [
  { value: true, key: 'yourRun.yes' },
  { value: false, key: 'yourRun.no' },
];
const YES: readonly Option[] = [{ value: true, key: 'yourRun.yes' }];

const bonding: readonly Field[] = [
  { kind: 'choice', name: 'bare', label: 'yourRun.bare', options: YES_NO, optional: true },
  {
    kind: 'choice',
    name: 'jumper',
    label: 'yourRun.jumper',
    options: [{ value: null, key: 'yourRun.noJumper' }, ...SIZES.map((value) => ({ value }))],
    optional: true,
  },
];
const joint: Field = {
  kind: 'choice',
  name: 'joint',
  label: 'yourRun.joint',
  options: options('joint', ['socketed', 'butt', 'expansion', 'free']),
};
const onLeg: Field = { kind: 'leg', name: 'leg', label: 'yourRun.onLeg' };
const at: Field = { kind: 'length', name: 'at', label: 'yourRun.at' };

export const startFields: readonly Field[] = [
  {
    kind: 'choice',
    name: 'kind',
    label: 'yourRun.startKind',
    options: options('kind', ['ladder', 'tray', 'free']),
  },
  joint,
  ...bonding,
];

export const legFields: readonly Field[] = [
  { kind: 'length', name: 'length', label: 'yourRun.length' },
  { kind: 'choice', name: 'onEdge', label: 'yourRun.onEdge', options: YES, optional: true },
  { kind: 'choice', name: 'barrier', label: 'yourRun.barrier', options: YES, optional: true },
  {
    kind: 'choice',
    name: 'keeps',
    label: 'yourRun.keeps',
    options: options('keeps', ['left', 'centre', 'right']),
    optional: true,
  },
  ...bonding,
];

export const limitFields: readonly Field[] = [
  { kind: 'length', name: 'maxSpan', label: 'yourRun.maxSpan', optional: true },
  {
    kind: 'choice',
    name: 'edition',
    label: 'yourRun.edition',
    options: EDITIONS.map((value) => ({ value })),
    optional: true,
  },
];

export const stockFields: readonly Field[] = [
  { kind: 'length', name: 'stock', label: 'yourRun.stock', optional: true },
  { kind: 'length', name: 'kerf', label: 'yourRun.kerf', optional: true },
];

export const tempFields: readonly Field[] = [
  { kind: 'number', name: 'lowF', label: 'yourRun.lowF' },
  { kind: 'number', name: 'highF', label: 'yourRun.highF' },
  { kind: 'number', name: 'nowF', label: 'yourRun.nowF' },
];

export type ListName = 'ends' | 'joints' | 'supports' | 'cables' | 'places' | 'marks';
export const LISTS: readonly ListName[] = ['ends', 'cables', 'joints', 'supports', 'places', 'marks'];

/** Fields of the rows of each list. */
export function listFields(list: ListName, run: Run, catalogue: Catalogue): readonly Field[] {
  return LIST_FIELDS[list](run, catalogue);
}

/** Joint items of the widths that the run may have. */
function jointItems(catalogue: Catalogue): readonly Option[] {
  const kinds = ['sleeve', 'plate', 'expansion', 'hinge'];
  return [...catalogue.values()].flatMap(({ id, kind }) => (kinds.includes(kind) ? [{ value: id }] : []));
}

const LIST_FIELDS: Readonly<Record<ListName, (run: Run, catalogue: Catalogue) => readonly Field[]>> = {
  ends: () => [
    onLeg,
    {
      kind: 'choice',
      name: 'kind',
      label: 'yourRun.endKind',
      options: options('kind', ['free', 'instrument', 'tray']),
    },
    joint,
    { kind: 'length', name: 'open', label: 'yourRun.open', optional: true },
    ...bonding,
  ],
  joints: (_, catalogue) => [
    onLeg,
    at,
    {
      kind: 'choice',
      name: 'kind',
      label: 'yourRun.jointKind',
      options: options('joint', ['socketed', 'butt', 'hinged', 'expansion', 'gap']),
    },
    { kind: 'length', name: 'gap', label: 'yourRun.gap', optional: true },
    { kind: 'pair', name: 'insertions', label: 'yourRun.insertions', optional: true },
    {
      kind: 'choice',
      name: 'item',
      label: 'yourRun.item',
      options: jointItems(catalogue),
      optional: true,
    },
    {
      kind: 'choice',
      name: 'hole',
      label: 'yourRun.hole',
      options: options('hole', ['small', 'large']),
      optional: true,
    },
    ...bonding,
  ],
  supports: () => [
    onLeg,
    at,
    {
      kind: 'choice',
      name: 'way',
      label: 'yourRun.way',
      options: options('way', ['horizontal', 'vertical']),
    },
    {
      kind: 'choice',
      name: 'hold',
      label: 'yourRun.hold',
      options: options('hold', ['clamp', 'guide', 'load']),
    },
  ],
  cables: () => [
    { kind: 'text', name: 'id', label: 'yourRun.cableId' },
    {
      kind: 'choice',
      name: 'type',
      label: 'yourRun.type',
      options: [...RADIUS_CABLES.map((value) => ({ value })), { value: 'tube', key: 'yourRun.tube' }],
    },
    { kind: 'number', name: 'odIn', label: 'yourRun.odIn', above: 0 },
    { kind: 'number', name: 'lbPerFt', label: 'yourRun.lbPerFt', above: -1e-9 },
    { kind: 'number', name: 'count', label: 'yourRun.count', above: 0, whole: true },
    {
      kind: 'choice',
      name: 'make',
      label: 'yourRun.make',
      options: options('make', ['multiconductor', 'single']),
    },
    {
      kind: 'choice',
      name: 'use',
      label: 'yourRun.use',
      options: options('use', ['power', 'signal', 'air']),
    },
    { kind: 'number', name: 'deviceA', label: 'yourRun.deviceA', above: 0, optional: true },
    { kind: 'choice', name: 'shielded', label: 'yourRun.shielded', options: YES, optional: true },
    {
      kind: 'choice',
      name: 'side',
      label: 'yourRun.side',
      options: options('side', ['left', 'right']),
      optional: true,
    },
    { kind: 'leg', name: 'to', label: 'yourRun.to' },
  ],
  places: () => [onLeg, { kind: 'lengths', name: 'at', label: 'yourRun.placesAt' }],
  marks: () => [
    onLeg,
    at,
    { kind: 'choice', name: 'kind', label: 'yourRun.markKind', options: options('mark', ['step']) },
  ],
};

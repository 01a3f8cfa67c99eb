/**
 * What a run is made of. Every value has an origin: where a figure was seen, or that it is a training value which
 * a site replaces by its own. `item.origin` holds for all values of the item but those that `origins` names.
 */
import type { Source } from '../trade/answer.ts';
import type { Ticks } from '../trade/length.ts';

export type Metal = 'aluminium' | 'steel' | 'stainless';

export type Origin = 'training value' | 'common practice' | 'adopted by the site';

interface Entry {
  readonly id: string;
  readonly origin: Origin;
  /** Origins of single values that differ from the item's, by the name of the field. */
  readonly origins?: Readonly<Record<string, Origin>> | undefined;
  /** Papers in which the site has adopted values of it, by the name of the field. */
  readonly papers?: Readonly<Record<string, Source>> | undefined;
}

interface ChannelPart extends Entry {
  readonly metal: Metal;
  /** Nominal inside width of the channel it belongs to. */
  readonly width: Ticks;
}

/** Holes along the floor: centres at `first + k·pitch` from either stock end. */
export interface HoleRow {
  readonly width: Ticks;
  readonly first: Ticks;
  readonly pitch: Ticks;
}

export interface Tray extends ChannelPart {
  readonly kind: 'tray';
  readonly bottom: 'ventilated' | 'solid';
  readonly outsideWidth: Ticks;
  readonly thickness: Ticks;
  readonly depth: Ticks;
  /** One length as it comes. */
  readonly length: Ticks;
  readonly weightLbPerFt: number;
  readonly loadTable: readonly { readonly spanFt: number; readonly lbPerFt: number }[];
  /** Centres of the plate holes from each end. */
  readonly plateHoles: readonly Ticks[];
  readonly webHoles: HoleRow;
  /** The joint item used when a joint names none, by kind of joint. */
  readonly own: {
    readonly socketed: string;
    readonly butt: string;
    readonly expansion: string;
    readonly hinged: string;
  };
}

/** Fasteners of a splice: how many in all, and where they stand. */
export interface Fastened {
  readonly fastening: string;
  readonly count: number;
}

interface JointPart extends ChannelPart {
  /** May be relied on as part of the ground path without a jumper. */
  readonly grounding: boolean;
}

export interface Sleeve extends JointPart {
  readonly kind: 'sleeve';
  readonly length: Ticks;
  readonly insertion: Ticks;
  readonly fastened: Fastened;
  /** Centre of the fastener in each leg, from each end of the sleeve. */
  readonly fastenerFromEnd: Ticks;
}

export interface Plate extends JointPart {
  readonly kind: 'plate';
  readonly length: Ticks;
  /** Across the channel; it lies under the floor, on the centre line. */
  readonly across: Ticks;
  readonly thickness: Ticks;
  readonly fastened: Fastened;
}

export interface ExpansionSplice extends JointPart {
  readonly kind: 'expansion';
  readonly length: Ticks;
  readonly fastened: Fastened;
}

export interface Hinge extends JointPart {
  readonly kind: 'hinge';
  readonly takeOut: Ticks;
  readonly insertion: Ticks;
}

export interface Elbow extends JointPart {
  readonly kind: 'elbow';
  readonly turn: 'flat' | 'inside' | 'outside';
  readonly angleDeg: number;
  readonly takeOut: Ticks;
  readonly insertion: Ticks;
  readonly insideRadius: Ticks;
}

export interface Branch extends JointPart {
  readonly kind: 'tee' | 'cross';
  readonly takeOut: Ticks;
  readonly insertion: Ticks;
}

/** `width` is the wide end, `narrow` the other. */
export interface Reducer extends JointPart {
  readonly kind: 'reducer';
  readonly narrow: Ticks;
  readonly hand: 'left' | 'right' | 'straight';
  readonly faceToFace: Ticks;
  readonly takeOut: Ticks;
  readonly insertion: Ticks;
}

/** A fastening place: hole, bolt and washer named together, because each is chosen for the other two. */
export interface Fastening extends Entry {
  readonly kind: 'fastening';
  readonly hole: { readonly name: 'small' | 'plate' | 'slot'; readonly width: Ticks };
  readonly bolt: {
    readonly head: 'round' | 'hex';
    readonly diameter: Ticks;
    readonly length: Ticks;
  };
  readonly washer: { readonly inside: Ticks; readonly outside: Ticks };
}

/** An item of one kind. */
export type ItemOf<K extends Item['kind']> =
  | Extract<Item, { readonly kind: K }>
  | (K extends 'tee' | 'cross' ? Branch : never);

export type Item = Tray | Sleeve | Plate | ExpansionSplice | Hinge | Elbow | Branch | Reducer | Fastening;

export type Catalogue = ReadonlyMap<string, Item>;

/** Whether the site has adopted a value of an item. */
export function isAdopted({ origin, origins }: Pick<Item, 'origin' | 'origins'>, field: string): boolean {
  return (origins?.[field] ?? origin) === 'adopted by the site';
}

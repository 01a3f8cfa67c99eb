/** What is needed besides channel: counted by support, by joint, by fitting and by jumper. */
import type { Catalogue } from './catalogue.ts';
import type { ResolvedRun } from './resolved.ts';

/** The usual parts; a fitting, hinge or expansion splice is counted as `fitting:ID`. */
export const PARTS = [
  'strut',
  'clamp',
  'guide',
  'channel-nut',
  'bolt',
  'washer',
  'splice-sleeve',
  'splice-plate',
  'splice-fastener',
  'jumper',
  'lug',
] as const;
export type Part = (typeof PARTS)[number];

export interface HardwareRow {
  readonly item: Part | `fitting:${string}`;
  readonly count: number;
}

/** Fasteners of one kind of fastening place of the catalogue: hole, bolt and washer named together. */
export interface FastenerRow {
  readonly fastening: string;
  readonly count: number;
}

export interface Hardware {
  /** In the order of `PARTS`, then the fittings in order of travel; without rows of 0. */
  readonly hardware: readonly HardwareRow[];
  /** The fasteners of the splices among them, by their fastening place. */
  readonly fasteners: readonly FastenerRow[];
}

class Counts<Key> {
  readonly #counts = new Map<Key, number>();
  add(key: Key, count: number): void {
    if (count > 0) this.#counts.set(key, (this.#counts.get(key) ?? 0) + count);
  }
  of(key: Key): number {
    return this.#counts.get(key) ?? 0;
  }
  entries(): readonly (readonly [Key, number])[] {
    return [...this.#counts];
  }
}

/** On each strut two nuts with bolts and washers hold the two sides; at a vertical support a third takes the middle. */
const SIDES = 2;
const nutsAt = { horizontal: SIDES, vertical: SIDES + 1 } as const;
const LUGS = 2;

/**
 * @param jumpers  how many the run needs
 */
export function hardware(
  { legs }: Pick<ResolvedRun, 'legs'>,
  catalogue: Catalogue,
  jumpers: number,
): Hardware {
  const parts = new Counts<Part>();
  const fitted = new Counts<string>();
  const fasteners = new Counts<string>();

  for (const leg of legs) {
    // In order of travel: the fitting before the leg, then what stands along it.
    const { fittingBefore: fitting } = leg;
    if (fitting !== null && fitting.out[0]?.leg === leg) fitted.add(fitting.item.id, 1);
    for (const { way, hold } of leg.supports) {
      parts.add('strut', 1);
      parts.add(hold === 'guide' ? 'guide' : 'clamp', SIDES);
      for (const part of ['channel-nut', 'bolt', 'washer'] as const) parts.add(part, nutsAt[way]);
    }
    for (const { item: id } of leg.joints) {
      const item = id === null ? undefined : catalogue.get(id);
      if (item === undefined) continue;
      if (item.kind === 'sleeve') parts.add('splice-sleeve', 1);
      else if (item.kind === 'plate') parts.add('splice-plate', 1);
      else fitted.add(item.id, 1);
      if ('fastened' in item) {
        parts.add('splice-fastener', item.fastened.count);
        fasteners.add(item.fastened.fastening, item.fastened.count);
      }
    }
  }
  parts.add('jumper', jumpers);
  parts.add('lug', LUGS * jumpers);

  return {
    hardware: [
      ...PARTS.filter((part) => parts.of(part) > 0).map((item) => ({ item, count: parts.of(item) })),
      ...fitted.entries().map(([id, count]) => ({ item: `fitting:${id}` as const, count })),
    ],
    fasteners: fasteners.entries().map(([fastening, count]) => ({ fastening, count })),
  };
}

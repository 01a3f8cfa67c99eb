/** What the calculators of mechanics are given; the description of a field is its manual. */
import { z } from 'zod';
import { type Catalogue, isAdopted, type Tray } from '../run/catalogue.ts';
import { valueSource } from '../run/sources.ts';
import type { Fault } from '../trade/given.ts';
import { GivenError } from '../trade/given.ts';
import type { LoadedTray, SpanGiven } from '../trade/span.ts';
import { above0, count } from './fields.ts';
import { from0 } from './ranges.ts';
import { sectionShape } from './sectionInput.ts';
import { type Loose, type TogetherFault, together } from './together.ts';

export { beamInput } from './beamInput.ts';
export { sectionInput } from './sectionInput.ts';

export const spanInput = together(
  z.strictObject({
    tray: z.string().min(1).optional().describe('id of a tray of the catalogue; or section with metal'),
    section: sectionShape.optional().describe('as the input of section, without densityLbIn3'),
    metal: z
      .enum(['steel', 'aluminium', 'stainless'])
      .optional()
      .describe('"steel", "aluminium" or "stainless"'),
    loadLbPerFt: from0.describe("uniform load, the tray's own weight included, from 0"),
    pointLb: from0.optional().describe('one weight at the middle of the span, from 0 (0)'),
    deflectionRatio: above0
      .nullable()
      .optional()
      .describe('span over greatest deflection, above 0 (200); null: not looked at'),
  }),
  whatCarries,
);
export type SpanInput = z.output<typeof spanInput>;

/** Either a tray, or a section with its metal. */
function whatCarries({ tray, section, metal }: Loose): readonly TogetherFault[] {
  if (tray !== undefined)
    return Object.entries({ section, metal }).flatMap(([field, value]) =>
      value === undefined
        ? []
        : [
            {
              path: [field],
              message: 'a tray is given too, and has its own',
              todo: 'keep either tray, or section with metal',
            },
          ],
    );
  if (section === undefined && metal === undefined)
    return [
      {
        path: ['tray'],
        message: 'nothing says what carries the load',
        todo: 'give tray, the id of a tray of the catalogue, or section with metal',
      },
    ];
  return Object.entries({ section, metal }).flatMap(([field, value]) =>
    value === undefined
      ? [
          {
            path: [field],
            message: 'this field is missing',
            todo: 'give section and metal together, or tray alone',
          },
        ]
      : [],
  );
}

/** The fault of a tray that the catalogue does not have; nothing where none is named. */
export function trayFaults(given: unknown, catalogue: () => Catalogue): readonly Fault[] {
  const tray = typeof given === 'object' && given !== null && 'tray' in given ? given.tray : undefined;
  if (typeof tray !== 'string' || tray === '' || catalogue().get(tray)?.kind === 'tray') return [];
  const ids = [...catalogue().values()].flatMap((item) => (item.kind === 'tray' ? [item.id] : []));
  return [
    {
      field: 'tray',
      value: tray,
      message: 'the catalogue has no tray of this id',
      todo: `name one of ${ids.join(' ')}`,
    },
  ];
}

/** A tray of the catalogue as `span` takes it. */
export function loadedTray(tray: Tray): LoadedTray {
  return {
    id: tray.id,
    loadTable: tray.loadTable,
    weightLbPerFt: tray.weightLbPerFt,
    adopted: isAdopted(tray, 'loadTable'),
    source: valueSource(tray, 'loadTable', 'load table'),
  };
}

/**
 * What was read, as `span` takes it.
 * @throws {GivenError} when the catalogue has no such tray
 */
export function spanGiven(read: SpanInput, catalogue: () => Catalogue): SpanGiven {
  const { tray: id, section, metal, ...load } = read;
  if (section !== undefined && metal !== undefined) return { ...load, section, metal };
  const tray = catalogue().get(id ?? '');
  if (tray?.kind !== 'tray') throw new GivenError(trayFaults(read, catalogue));
  return { ...load, tray: loadedTray(tray) };
}

export const equivalentInput = z.strictObject({
  staticLb: from0.describe('one weight, from 0'),
  spanFt: above0.describe('support to support, above 0'),
  otherLbPerFt: from0.describe('uniform load beside it, from 0'),
});

export const verticalInput = z.strictObject({
  dropFt: above0.describe('height of the drop, above 0'),
  lbPerFt: from0.describe('tray and all that hangs on it, from 0'),
  loadSupports: count.describe('supports that bear its weight, from 1; guides do not'),
});

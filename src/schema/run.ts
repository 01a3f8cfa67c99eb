import { z } from 'zod';
import type { Run } from '../run/types.ts';
import { SIZES } from '../trade/jumper.ts';
import { RADIUS_CABLES } from '../trade/radius.ts';
import { edition } from './fields.ts';
import { lengthAbove0 as above0, lengthFrom0 as length } from './length.ts';

/** The shape of a run as files and commands give it; what it means is said in src/run/README.md. */

const name = z.string().min(1);
const endJoint = z.enum(['socketed', 'butt', 'expansion', 'free']);
/** What any joint, start or end may say of bonding: ends scraped bare, and the jumper fitted. */
const bonding = { bare: z.boolean().optional(), jumper: z.enum(SIZES).nullable().optional() };

const direction = z.union([
  z.enum(['N', 'E', 'S', 'W', 'U', 'D']),
  z.strictObject({
    azimuthDeg: z.number().min(0).lt(360),
    slopeDeg: z.number().min(-90).max(90),
  }),
]);

const leg = z.strictObject({
  id: name,
  /** `start`, the leg it goes on from, or `LEG:left`, `LEG:right`. */
  from: name,
  fitting: name.nullable(),
  dir: direction,
  /** Working point to working point; to the channel end on a last leg. */
  length: above0,
  onEdge: z.boolean().optional(),
  barrier: z.boolean().optional(),
  keeps: z.enum(['left', 'centre', 'right']).optional(),
  ...bonding,
});

const joint = z.strictObject({
  leg: name,
  /** From the leg's first working point to the middle of the opening. */
  at: length,
  kind: z.enum(['socketed', 'butt', 'hinged', 'expansion', 'gap']),
  item: name.optional(),
  gap: length.optional(),
  insertions: z.tuple([length, length]).optional(),
  hole: z.enum(['small', 'large']).optional(),
  ...bonding,
});

const cable = z.strictObject({
  id: name,
  /** One that has a radius of bend, or a tube that carries air. */
  type: z.enum([...RADIUS_CABLES, 'tube']),
  shielded: z.boolean().optional(),
  odIn: z.number().positive(),
  lbPerFt: z.number().min(0),
  count: z.int().min(1),
  make: z.enum(['multiconductor', 'single']),
  use: z.enum(['power', 'signal', 'air']),
  deviceA: z.number().positive().optional(),
  side: z.enum(['left', 'right']).optional(),
  to: name,
});

export const runShape = z.strictObject({
  v: z.literal(1),
  /** Catalogue id. */
  tray: name,
  /** One length as it comes; left out: the tray's. */
  stock: above0.optional(),
  /** What the saw takes; left out: 1/8 in. */
  kerf: length.optional(),
  start: z.strictObject({ kind: z.enum(['ladder', 'tray', 'free']), joint: endJoint, ...bonding }),
  legs: z.array(leg).min(1),
  ends: z
    .array(
      z.strictObject({
        leg: name,
        kind: z.enum(['free', 'instrument', 'tray']),
        joint: endJoint,
        open: length.optional(),
        ...bonding,
      }),
    )
    .optional(),
  joints: z.array(joint).optional(),
  supports: z
    .array(
      z.strictObject({
        leg: name,
        at: length,
        way: z.enum(['horizontal', 'vertical']),
        hold: z.enum(['clamp', 'guide', 'load']),
      }),
    )
    .optional(),
  cables: z.array(cable).optional(),
  marks: z.array(z.strictObject({ leg: name, at: length, kind: z.literal('step') })).optional(),
  places: z.array(z.strictObject({ leg: name, at: z.array(length) })).optional(),
  limits: z
    .strictObject({
      maxSpan: above0.optional(),
      edition,
    })
    .optional(),
  temps: z.strictObject({ lowF: z.number(), highF: z.number(), nowF: z.number() }).optional(),
}) satisfies z.ZodType<Run>;

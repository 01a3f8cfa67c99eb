/** The shape of a run as a JSON Schema, for other programs; published with the site as run.schema.json. */
import { z } from 'zod';
import { runShape } from './run.ts';

/**
 * JSON Schema (draft 2020-12) of what may be given. It judges fields and kinds; what it cannot judge, the command does:
 * lengths in text, names of legs and items, whether the run hangs together.
 */
export const runJsonSchema = {
  title: 'A run of narrow channel cable tray',
  description:
    'Legs, fittings, joints, supports and cables as trayhand reads them. Lengths are numbers of inches, or texts.',
  ...z.toJSONSchema(runShape, { io: 'input', unrepresentable: 'any' }),
};

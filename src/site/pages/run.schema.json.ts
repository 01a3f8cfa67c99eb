/** The JSON Schema of a run. */
import { runJsonSchema } from '../../schema/runJsonSchema.ts';

export const GET = (): Response =>
  new Response(`${JSON.stringify(runJsonSchema, null, 2)}\n`, {
    headers: { 'content-type': 'application/schema+json' },
  });

/**
 * The model of the family that this page is about. The page names it (`data-model`), and this module is there only once
 * the model is: a draw needs it at once, and no page fetches the models of other families.
 */
import type { AnyModel } from '../../../practice/model.ts';
import { modelFile } from '../../../practice/proofs.ts';

const files = import.meta.glob<Record<string, unknown>>([
  '../../../practice/models/*/*.ts',
  '!**/index.ts',
  '!**/parts/*.ts',
]);

/** The one model among what its file exports. */
const modelIn = (file: Record<string, unknown>) =>
  Object.values(file).find(
    (one): one is AnyModel => typeof one === 'object' && one !== null && 'wants' in one && 'slips' in one,
  );

async function load(): Promise<ReadonlyMap<string, AnyModel>> {
  if (import.meta.env.SSR) return (await import('../../../practice/models/index.ts')).models;
  const name = document.querySelector<HTMLElement>('[data-model]')?.dataset['model'] ?? '';
  const path = Object.keys(files).find((one) => one.endsWith(`/${modelFile(name)}`));
  const model = path === undefined ? undefined : modelIn((await files[path]?.()) ?? {});
  return new Map(model === undefined ? [] : [[name, model]]);
}

export const models = await load();

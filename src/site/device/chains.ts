/** Every chain that was ever written on this device: each key that it had, under each name that it went by. */
import { chainOf } from '../../register/header.ts';
import type { KeyFile } from '../../register/keyFile.ts';
import { openStore } from './store.ts';

/** The kept text with the chains of these keys among its own. */
export function withChains(text: string | undefined, ...keys: readonly (KeyFile | undefined)[]): string {
  const chains = keys.flatMap((key) =>
    key === undefined ? [] : [chainOf({ signer: key.publicKey, device: key.device })],
  );
  return JSON.stringify([...new Set([...(JSON.parse(text ?? '[]') as readonly string[]), ...chains])]);
}

/** The key that is here now is among them: an earlier version kept no list. */
export async function chainsHere(): Promise<ReadonlySet<string>> {
  const store = (await openStore()).transaction(['key', 'texts']);
  const [key, text] = await Promise.all([
    store.objectStore('key').get('own'),
    store.objectStore('texts').get('chains'),
  ]);
  return new Set(JSON.parse(withChains(text, key)) as readonly string[]);
}

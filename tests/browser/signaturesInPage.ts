/** What signatures.test.ts runs in a page: the register's verifier, with the browser's engine or without. */
import { fromHex } from '../../src/register/bytes.ts';
import { isGoodPoint } from '../../src/register/keys.ts';
import { verifierOf } from '../../src/register/webcrypto.ts';

/** As hexadecimal digits. */
export interface Signed {
  readonly publicKey: string;
  readonly message: string;
  readonly signature: string;
}

export async function answers(cases: readonly Signed[], engine: boolean): Promise<boolean[]> {
  const verify = verifierOf(engine ? globalThis.crypto.subtle : undefined);
  const all: boolean[] = [];
  for (const c of cases) all.push(await verify(c.publicKey, fromHex(c.message), c.signature));
  return all;
}

export const good = (keys: readonly string[]): boolean[] => keys.map((key) => isGoodPoint(key));

/** Imports a key into the browser's engine. @throws where it does not know Ed25519 */
export async function engineKnows(publicKey: string): Promise<string> {
  const key = await crypto.subtle.importKey('raw', fromHex(publicKey), 'Ed25519', false, ['verify']);
  return key.algorithm.name;
}

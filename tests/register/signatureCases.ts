/** Signatures that all engines must take or refuse alike: read from references, and made here where none was found. */
import { ed25519 } from '@noble/curves/ed25519.js';
import { sha512 } from '@noble/hashes/sha2.js';
import { fromHex, toHex } from '../../src/register/bytes.ts';
import { publicKeyOf, signPlain } from '../../src/register/keys.ts';
import edges from '../references/register/edges.json' with { type: 'json' };
import rfc8032 from '../references/register/rfc8032.json' with { type: 'json' };

export interface SignatureCase {
  readonly id: string;
  readonly publicKey: string;
  /** Hexadecimal, as all of it. */
  readonly message: string;
  readonly signature: string;
  readonly takes: boolean;
}
interface Given {
  readonly op: string;
  readonly publicKey?: string;
  readonly message?: string;
  readonly signature?: string;
}

const read = [...rfc8032, ...edges] as readonly {
  id: string;
  given: Given;
  expect: unknown;
  source: string;
}[];

/** Every `edVerify` of the references. */
const referred: readonly SignatureCase[] = read
  .filter(({ given }) => given.op === 'edVerify')
  .map(({ id, given: { publicKey = '', message = '', signature = '' }, expect }) => {
    return { id, publicKey, message, signature, takes: expect === true };
  });

/** Every `keyOk` of the references. */
export const keyCases: readonly {
  readonly publicKey: string;
  readonly good: boolean;
  readonly source: string;
}[] = read
  .filter(({ given }) => given.op === 'keyOk')
  .map(({ given, expect, source }) => ({ publicKey: given.publicKey ?? '', good: expect === true, source }));

const seed = new Uint8Array(32).fill(7);
const key = toHex(publicKeyOf(seed));
const said = new TextEncoder().encode('trayhand-register-1\n');

/** Little-endian number of bytes. */
const numberOf = (bytes: Uint8Array): bigint => BigInt(`0x${toHex(bytes.slice().reverse())}`);
const bytesOf = (n: bigint): Uint8Array =>
  Uint8Array.from({ length: 32 }, (_, i) => Number((n >> BigInt(8 * i)) & 255n));

/**
 * A good key's signature whose R has a point of order 8 added: it holds when the equation is multiplied by the cofactor
 * and not as it stands (RFC 8032 §5.1.7 allows either; this format takes the plain one).
 */
function cofactored(): SignatureCase {
  const order = ed25519.Point.Fn.ORDER;
  const secret = ed25519.utils.getExtendedPublicKey(seed).scalar;
  const torsion = ed25519.Point.fromHex('26e8958fc2b227b045c3f489f2ef98f0d5dfac05d3c63339b13802886d53fc05');
  const r = 1234567n;
  const point = ed25519.Point.BASE.multiply(r).add(torsion).toBytes();
  const k = numberOf(sha512(Uint8Array.from([...point, ...fromHex(key), ...said]))) % order;
  const s = (r + k * secret) % order;
  const signature = `${toHex(point)}${toHex(bytesOf(s))}`;
  return {
    id: 'R with a point of order 8 added',
    publicKey: key,
    message: toHex(said),
    signature,
    takes: false,
  };
}

/** A good signature, and each of its halves wrong in one way. */
function made(): readonly SignatureCase[] {
  const good = toHex(signPlain(seed, said));
  const [r, s] = [good.slice(0, 64), good.slice(64)];
  const order = ed25519.Point.Fn.ORDER;
  const more = (n: bigint) => toHex(bytesOf(numberOf(fromHex(s)) + n * order));
  const of = (id: string, signature: string, takes = false): SignatureCase => {
    return { id, publicKey: key, message: toHex(said), signature, takes };
  };
  return [
    of('good', good, true),
    of('S and the order once', `${r}${more(1n)}`),
    of('S and the order as often as 32 bytes hold it', `${r}${more(15n)}`),
    of('S of zero', `${r}${'00'.repeat(32)}`),
    of('R the identity, S of zero', `01${'00'.repeat(31)}${'00'.repeat(32)}`),
    of('R the identity', `01${'00'.repeat(31)}${s}`),
    of(
      'R its negative',
      `${r.slice(0, 62)}${toHex(Uint8Array.of(Number.parseInt(r.slice(62), 16) ^ 0x80))}${s}`,
    ),
    of('R no point', `02${'00'.repeat(31)}${s}`),
    cofactored(),
  ];
}

export const signatureCases: readonly SignatureCase[] = [...referred, ...made()];

import { describe, expect, test } from 'vitest';
import { fromHex, toHex } from '../../src/register/bytes.ts';
import {
  keyFileText,
  makeKey,
  publicKeyText,
  readKeyFile,
  readPublicFile,
  readPublicKey,
  unwrapKey,
  wrapKey,
} from '../../src/register/keyFile.ts';
import { isGoodPoint, publicKeyOf, signPlain, verifyPlain } from '../../src/register/keys.ts';
import { verifierOf } from '../../src/register/webcrypto.ts';
import cases from '../references/register/rfc8032.json' with { type: 'json' };

interface Case {
  id: string;
  source: string;
  given: {
    op: string;
    name?: string;
    publicKey?: string;
    seed?: string;
    message?: string;
    signature?: string;
  };
  expect: boolean | string;
}
const of = (op: string): Case[] => (cases as Case[]).filter((c) => c.given.op === op);
const engine = verifierOf(globalThis.crypto.subtle);
const none = verifierOf(undefined);

describe('signatures', () => {
  test.each(of('edSign'))('$id $given.name: $source', ({ given, expect: want }) => {
    expect(toHex(signPlain(fromHex(given.seed ?? ''), fromHex(given.message ?? '')))).toBe(want);
  });
  test.each(of('edVerify'))('$id $given.name: $source', async ({ given, expect: want }) => {
    const { publicKey = '', message = '', signature = '' } = given;
    expect(verifyPlain(publicKey, fromHex(message), signature)).toBe(want);
    expect(await engine(publicKey, fromHex(message), signature)).toBe(want);
    expect(await none(publicKey, fromHex(message), signature)).toBe(want);
  });
  test.each(of('keyOk'))('$id key $given.publicKey: $source', ({ given, expect: want }) => {
    expect(isGoodPoint(given.publicKey ?? '')).toBe(want);
  });
  test('no case of the references is left out', () => {
    expect(of('edSign').length + of('edVerify').length + of('keyOk').length).toBe(cases.length);
  });
  test('capitals, wrong lengths and what is no text are no signatures', async () => {
    const seed = new Uint8Array(32).fill(7);
    const key = toHex(publicKeyOf(seed));
    const message = fromHex('00');
    const good = toHex(signPlain(seed, message));
    for (const verify of [engine, none]) {
      expect(await verify(key, message, good)).toBe(true);
      expect(await verify(key, message, good.toUpperCase())).toBe(false);
      expect(await verify(key, message, good.slice(2))).toBe(false);
      expect(await verify(key.slice(2), message, good)).toBe(false);
    }
  });
});

describe('key files', () => {
  const chance = (n: number) => new Uint8Array(n).fill(9);
  const key = makeKey('kd-phone', chance);

  test('open: read back, signs as its public key says', async () => {
    const read = readKeyFile(keyFileText(key));
    expect(read).toEqual(key);
    const signer = await unwrapKey(read, undefined, undefined);
    const message = fromHex('abcd');
    expect(verifyPlain(key.publicKey, message, toHex(await signer.sign(message)))).toBe(true);
  });
  test('wrapped: hides the seed, opens with its passphrase and no other', async () => {
    const wrapped = await wrapKey(key, 'päss phrase', crypto.subtle, chance);
    expect(keyFileText(wrapped)).not.toContain(
      '0909090909090909090909090909090909090909090909090909090909090909',
    );
    expect(wrapped.secret).toMatchObject({ form: 'wrapped', iterations: 600_000 });
    const read = readKeyFile(keyFileText(wrapped));
    const signer = await unwrapKey(read, 'päss phrase', crypto.subtle);
    expect(toHex(await signer.sign(fromHex('01')))).toBe(toHex(signPlain(chance(32), fromHex('01'))));
    // the same word, its accent written apart (Unicode NFC makes them one)
    await expect(unwrapKey(read, 'pa\u0308ss phrase', crypto.subtle)).resolves.toBeDefined();
    await expect(unwrapKey(read, 'pass phrase', crypto.subtle)).rejects.toThrow(/does not open/);
    await expect(unwrapKey(read, undefined, crypto.subtle)).rejects.toThrow(/wrapped/);
    await expect(wrapKey(read, 'x', crypto.subtle, chance)).rejects.toThrow(/already/);
    await expect(wrapKey(key, '', crypto.subtle, chance)).rejects.toThrow(/empty/);
  });
  test('a public half that was changed is found out', async () => {
    const other = toHex(publicKeyOf(new Uint8Array(32).fill(8)));
    await expect(unwrapKey({ ...key, publicKey: other }, undefined, undefined)).rejects.toThrow(
      /another public key/,
    );
    const wrapped = await wrapKey(key, 'x', crypto.subtle, chance);
    await expect(unwrapKey({ ...wrapped, publicKey: other }, 'x', crypto.subtle)).rejects.toThrow();
  });
  test.each([
    ['{}', /not a key file/],
    ['', /not JSON/],
    [keyFileText({ ...key, publicKey: '01'.padEnd(64, '0') }), /small order/],
    [keyFileText({ ...key, device: 'my phone' }), /not a key file/],
    [keyFileText(key).replace('"v": 1', '"v": 2'), /not a key file/],
    [keyFileText(key).replace('"open"', '"open", "more": 1'), /not a key file/],
  ])('%j is refused', (text, why) => expect(() => readKeyFile(text)).toThrow(why));
  test('few rounds over the passphrase are refused', async () => {
    const wrapped = await wrapKey(key, 'x', crypto.subtle, chance);
    const weak = keyFileText(wrapped).replace('600000', '599999');
    expect(() => readKeyFile(weak)).toThrow(/600000/);
  });
  test('a public key is read from digits, its own file, or a key file', () => {
    for (const text of [
      key.publicKey,
      ` ${key.publicKey.toUpperCase()}\n`,
      publicKeyText(key.publicKey),
      keyFileText(key),
    ]) {
      expect(readPublicKey(text)).toBe(key.publicKey);
    }
    for (const text of ['', 'abc', '{}', '00'.repeat(32), `ec${'ff'.repeat(30)}7f`]) {
      expect(() => readPublicKey(text)).toThrow();
    }
  });
  test.each(['', 'my phone', 'x'.repeat(33), 'ä'])('%j is no device', (name) => {
    expect(() => makeKey(name, chance)).toThrow(/device/);
  });
});

describe('the file that is handed to the owner', () => {
  const open = makeKey('kd-phone', (n) => new Uint8Array(n).fill(7));
  test('a public file and the bare digits are taken', () => {
    expect(readPublicFile(publicKeyText(open.publicKey))).toBe(open.publicKey);
    expect(readPublicFile(` ${open.publicKey}\n`)).toBe(open.publicKey);
  });
  test('a key file is not, wrapped or open: it says that it is the secret one', async () => {
    const wrapped = await wrapKey(open, 'a long passphrase', crypto.subtle, (n) => new Uint8Array(n));
    for (const key of [open, wrapped]) {
      expect(() => readPublicFile(keyFileText(key))).toThrow('secret key file; never hand it out');
    }
  });
});

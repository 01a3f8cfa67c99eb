/**
 * The browser's own engine and the plain one take the same signatures as Node's. The verifier is bundled from its
 * source here and run in an empty page: the built site is not needed.
 */
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { build } from 'vite';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { keyCases, signatureCases } from '../register/signatureCases.ts';
import { openBrowser } from './browser.ts';
import type * as InPage from './signaturesInPage.ts';

/** A page has an engine when it is secure, as those of `localhost` are. */
const secure = 'http://localhost/';

/** One classic script that leaves the module behind as `inPage`. */
async function bundle(): Promise<string> {
  const entry = fileURLToPath(new URL('signaturesInPage.ts', import.meta.url));
  const made = await build({
    configFile: false,
    logLevel: 'silent',
    build: { write: false, minify: false, lib: { entry, name: 'inPage', formats: ['iife'] } },
  });
  const [first] = Array.isArray(made) ? made : [made];
  const chunk = first !== undefined && 'output' in first ? first.output[0] : undefined;
  if (chunk?.type !== 'chunk') throw new Error('nothing was bundled');
  return chunk.code;
}

let browser: Browser;
let page: Page;
beforeAll(async () => {
  const [script, opened] = await Promise.all([bundle(), openBrowser()]);
  browser = opened;
  page = await browser.newPage();
  await page.route(`${secure}**`, (route) =>
    route.fulfill({ contentType: 'text/html', body: '<!doctype html><title>signatures</title>' }),
  );
  await page.goto(secure);
  await page.addScriptTag({ content: script });
});
afterAll(() => browser?.close());

type Bundled = { readonly inPage: typeof InPage };
const asked = ({ publicKey, message, signature }: InPage.Signed): InPage.Signed => {
  return { publicKey, message, signature };
};
const answers = (cases: readonly InPage.Signed[], engine: boolean): Promise<boolean[]> =>
  page.evaluate(([list, own]) => (globalThis as unknown as Bundled).inPage.answers(list, own), [
    cases.map(asked),
    engine,
  ] as const);

test('this browser’s engine knows Ed25519: what follows is about it', async () => {
  const [good] = signatureCases.filter(({ id }) => id === 'good');
  const name = await page.evaluate(
    (key) => (globalThis as unknown as Bundled).inPage.engineKnows(key),
    good?.publicKey ?? '',
  );
  expect(name).toBe('Ed25519');
});
test.each([
  ['its own engine', true],
  ['the plain one', false],
] as const)('%s takes and refuses what Node does', async (_, engine) => {
  const here = await answers(signatureCases, engine);
  expect(signatureCases.map(({ id }, i) => `${id}: ${here[i]}`)).toEqual(
    signatureCases.map(({ id, takes }) => `${id}: ${takes}`),
  );
});
test('keys of small order, of mixed order, and in other bytes than the canonical are refused there too', async () => {
  const good = await page.evaluate(
    (keys) => (globalThis as unknown as Bundled).inPage.good(keys),
    keyCases.map(({ publicKey }) => publicKey),
  );
  expect(good).toEqual(keyCases.map((k) => k.good));
  const crossed = keyCases
    .filter((k) => !k.good)
    .flatMap(({ publicKey }) => signatureCases.map((c) => ({ ...c, publicKey })));
  expect((await answers(crossed, true)).filter((taken) => taken)).toEqual([]);
});

/**
 * The browser's own engine and the plain one take the same signatures as Node's. The verifier is served from its
 * source and run in an empty page: the built site is not needed.
 */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { keyCases, signatureCases } from '../register/signatureCases.ts';
import { openBrowser } from './browser.ts';
import { modulePage, moduleText } from './modules.ts';
import type * as InPage from './signaturesInPage.ts';

/** A page has an engine when it is secure, as those of `localhost` are. */
const secure = 'http://localhost/';

/** The page with what it runs as `inPage`. */
const html = modulePage(
  'signatures',
  "import * as inPage from '/tests/browser/signaturesInPage.ts'; globalThis.inPage = inPage;",
);

let browser: Browser;
let page: Page;
beforeAll(async () => {
  browser = await openBrowser();
  page = await browser.newPage();
  await page.route(`${secure}**`, (route) => {
    const { pathname } = new URL(route.request().url());
    if (pathname === '/') return route.fulfill({ contentType: 'text/html', body: html });
    const body = moduleText(pathname);
    return body === undefined
      ? route.fulfill({ status: 404 })
      : route.fulfill({ contentType: 'text/javascript; charset=utf-8', body });
  });
  await page.goto(secure);
});
afterAll(() => browser?.close());

type InIt = { readonly inPage: typeof InPage };
const asked = ({ publicKey, message, signature }: InPage.Signed): InPage.Signed => {
  return { publicKey, message, signature };
};
const answers = (cases: readonly InPage.Signed[], engine: boolean): Promise<boolean[]> =>
  page.evaluate(([list, own]) => (globalThis as unknown as InIt).inPage.answers(list, own), [
    cases.map(asked),
    engine,
  ] as const);

test('this browser’s engine knows Ed25519: what follows is about it', async () => {
  const [good] = signatureCases.filter(({ id }) => id === 'good');
  const name = await page.evaluate(
    (key) => (globalThis as unknown as InIt).inPage.engineKnows(key),
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
    (keys) => (globalThis as unknown as InIt).inPage.good(keys),
    keyCases.map(({ publicKey }) => publicKey),
  );
  expect(good).toEqual(keyCases.map((k) => k.good));
  const crossed = keyCases
    .filter((k) => !k.good)
    .flatMap(({ publicKey }) => signatureCases.map((c) => ({ ...c, publicKey })));
  expect((await answers(crossed, true)).filter((taken) => taken)).toEqual([]);
});

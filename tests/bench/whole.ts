/** `npm run bench`: lengths, practice and the register. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { contentFiles } from '../../src/cli/contentFiles.ts';
import { paperPalette } from '../../src/drawing/palette.ts';
import { drawOf } from '../../src/practice/draw.ts';
import { gradeDraw } from '../../src/practice/grade.ts';
import { keyOf } from '../../src/practice/key.ts';
import { figuresOf } from '../../src/practice/show.ts';
import { boardOf } from '../../src/register/board.ts';
import { openRegister } from '../../src/register/register.ts';
import { verifierOf } from '../../src/register/webcrypto.ts';
import { dayIn } from '../../src/schema/dayIn.ts';
import { readLibrary } from '../../src/schema/library.ts';
import { practiceOf } from '../../src/schema/practice.ts';
import { taskMapOf } from '../../src/schema/task.ts';
import { speaker } from '../../src/schema/words.ts';
import { formatLength, readLength } from '../../src/trade/length.ts';
import { compare, type Pair } from './ratio.ts';

const { library } = readLibrary(contentFiles());
const practice = practiceOf(library);
const language = { lang: 'en', speak: speaker(library.words.get('en') ?? new Map()) };
const families = [...practice.families.values()];
const seeds = Array.from({ length: 50 }, (_, k) => String(k));

const folder = 'content/demo/register';
const files = Object.fromEntries(
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.jsonl?$/.test(name))
    .map((name) => [name.replaceAll('\\', '/'), readFileSync(join(folder, name), 'utf8')]),
);
const demo = JSON.parse(readFileSync('content/demo/demo.json', 'utf8')) as { on: string; at: string };
const opening = { now: Date.parse(demo.at), dayIn, verify: verifierOf(globalThis.crypto.subtle) };
const { judged } = await openRegister(files, opening);
const map = taskMapOf(library);
const entries = Object.entries(files)
  .filter(([name]) => name.startsWith('headers/'))
  .flatMap(([, text]) => text.split('\n').filter(Boolean));

const { privateKey, publicKey } = (await crypto.subtle.generateKey('Ed25519', true, [
  'sign',
  'verify',
])) as CryptoKeyPair;
const message = new TextEncoder().encode('x'.repeat(600));
const signature = await crypto.subtle.sign('Ed25519', privateKey, message);

const lengths = Array.from({ length: 20_000 }, (_, k) => `${k % 40}'-${k % 12} ${(k % 15) + 1}/16"`);

const pairs: readonly Pair[] = [
  {
    what: '20,000 lengths read and written again',
    baseline: 'the same texts through parseFloat and toFixed',
    work: () => lengths.map((text) => formatLength(readLength(text))),
    against: () => lengths.map((text) => Number.parseFloat(text).toFixed(4)),
  },
  {
    what: '50 draws of every family, drawn and graded',
    baseline: 'their figures alone',
    work: () =>
      families.map((family) =>
        seeds.map((seed) => {
          const draw = drawOf(family, seed, practice.world);
          return gradeDraw(draw, keyOf(draw, practice.world, language).answers, practice.world, language);
        }),
      ),
    against: () =>
      families.map((family) =>
        seeds.map((seed) =>
          figuresOf(drawOf(family, seed, practice.world), practice.world, language, {
            form: 'phone',
            palette: paperPalette,
          }),
        ),
      ),
  },
  {
    what: `the demo register opened and verified (${entries.length} entries)`,
    baseline: 'as many bare signatures verified',
    work: () => openRegister(files, opening),
    against: async () => {
      for (const _ of entries) await crypto.subtle.verify('Ed25519', publicKey, signature, message);
    },
  },
  {
    what: 'the crew board of the open register',
    baseline: 'opening it',
    work: () => boardOf(judged, { on: demo.on, map }),
    against: () => openRegister(files, opening),
  },
];

await compare(pairs);

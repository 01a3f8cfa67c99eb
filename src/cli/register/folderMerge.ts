/**
 * Brings a joined register into its folder. Everything that needs room is made ready first. Where several chains grow, a file
 * with all the new lines comes in before any of them and goes when all stand: a reader takes lines from wherever they
 * stand, so at no moment is one held without what it cites.
 */
import { join } from 'node:path';
import { type Held, markerText, type RegisterFiles } from '../../register/held.ts';
import type { Merged } from '../../register/merge.ts';
import { claimedHash, isBodyPath, isChainPath, MARKER } from '../../register/paths.ts';
import { sameChains } from './folder.ts';
import { keepFolder, makeFolder, type Ready, readyFile, removeFile, someHex } from './folderDisk.ts';
import { writingTo } from './folderFaults.ts';
import { erasedTexts } from './folderLeft.ts';
import { withLock } from './folderLock.ts';
import { dropBodies, putNew, soundFolders, undoing } from './folderWrite.ts';

/** A file of new lines that are on their way into their chains. */
const isOnItsWay = (path: string): boolean => /^headers\/merging-[0-9a-f]{16}\.jsonl$/.test(path);

/** What has to be done to a folder, by path. */
interface Plan {
  /** Bodies, and the pointer where there is none. */
  readonly put: RegisterFiles;
  /** Whole chains that grow. */
  readonly chains: RegisterFiles;
  /** Every line that is new to its chain. */
  readonly lines: string;
  /** Files of lines whose way has come to its end. */
  readonly arrived: readonly string[];
}

/**
 * @param before  the folder's files
 * @param held    what was read from them
 * @param merged  what it is to hold
 * @param pointer whether a folder that lost its pointer gets one
 * @returns false, with nothing written, when the folder's chains are no longer those that were read
 * @throws {GivenError} nothing can be written there, and nothing was
 */
export function mergeFolder(
  folder: string,
  before: RegisterFiles,
  held: Held,
  merged: Merged,
  pointer: 'put' | 'left' = 'put',
): boolean {
  const plan = planOf(before, held, merged, pointer);
  const lines = [plan.put, plan.chains].some((files) => Object.keys(files).length > 0);
  const texts = merged.gone.length > 0 && erasedTexts(folder, before, merged.gone).length > 0;
  if (!lines && plan.arrived.length === 0 && !texts) return true;
  return writingTo(folder, () =>
    withLock(folder, (lock) => {
      soundFolders(folder);
      if (!sameChains(folder, before)) return false;
      const steps: Ready[] = [];
      const chains = Object.entries(plan.chains);
      const way = chains.length > 1 ? [[`headers/merging-${someHex(8)}.jsonl`, plan.lines] as const] : [];
      undoing((undo) => {
        for (const [path, text] of Object.entries(plan.put)) putNew(folder, path, text, lock, undo);
        makeFolder(join(folder, 'headers'));
        for (const [path, text] of [...way, ...chains]) {
          const ready = readyFile(join(folder, path), text);
          undo(ready.forget);
          steps.push(ready);
        }
        lock.still();
      });
      nameAll(steps, join(folder, 'headers'));
      for (const [path] of way) removeFile(join(folder, path));
      for (const path of plan.arrived) removeFile(join(folder, path));
      if (merged.gone.length > 0) dropBodies(folder, before, merged.gone);
      return true;
    }),
  );
}

/** From the first name on there is no way back, and none is needed: it brings every line, and their bodies stand. */
function nameAll(steps: readonly Ready[], inFolder: string): void {
  try {
    for (const [i, name] of steps.entries()) {
      name();
      if (i === 0) keepFolder(inFolder);
    }
    keepFolder(inFolder);
  } finally {
    for (const { forget } of steps) forget();
  }
}

/** Whether an earlier merge into a folder was broken off. */
export const isBrokenOff = (files: RegisterFiles): boolean => Object.keys(files).some(isOnItsWay);

function planOf(before: RegisterFiles, held: Held, merged: Merged, pointer: 'put' | 'left'): Plan {
  const files = Object.entries(merged.files);
  const stand = new Set(
    Object.entries(before).flatMap(([path, text]) =>
      isChainPath(path) && !isOnItsWay(path) ? wholeLines(text) : [],
    ),
  );
  const chains: Record<string, string> = {};
  let lines = '';
  for (const [path, text] of files.filter(([p]) => isChainPath(p))) {
    const come = wholeLines(text).filter((line) => !stand.has(line));
    if (come.length === 0) continue;
    chains[path] = text + keptOf(path, before, held, merged.begin);
    lines += come.map((line) => `${line}\n`).join('');
  }
  const put = files.filter(([path]) => isBodyPath(path) && !held.bodies.has(claimedHash(path) ?? ''));
  if (pointer === 'put' && before[MARKER] === undefined) put.push([MARKER, markerText(merged.begin)]);
  const taken = new Set([...stand, ...wholeLines(Object.values(chains).join(''))]);
  return {
    put: Object.fromEntries(put),
    chains,
    lines,
    arrived: Object.keys(before).filter(
      (path) => isOnItsWay(path) && wholeLines(before[path] ?? '').every((line) => taken.has(line)),
    ),
  };
}

const wholeLines = (text: string): readonly string[] => text.split('\n').slice(0, -1);

/** What a chain's file holds beside entries of this register: it stays, for whoever asks what happened to it. */
function keptOf(path: string, before: RegisterFiles, held: Held, begin: string): string {
  const text = before[path] ?? '';
  const own = [...held.entries.values()].filter((e) => e.file === path);
  const foreign = own.filter((e) => (e.header.register ?? e.id) !== begin);
  const bad = held.problems.filter((p) => p.file === path && p.code !== 'torn-tail');
  const kept = new Set([...bad, ...foreign].map((e) => e.line));
  const lines = wholeLines(text).filter((_, i) => kept.has(i + 1));
  const tail = text.slice(text.lastIndexOf('\n') + 1);
  return lines.map((line) => `${line}\n`).join('') + tail;
}

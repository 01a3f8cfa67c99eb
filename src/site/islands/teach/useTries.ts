import { useEffect, useRef, useState } from 'react';
import type { Practice } from '../../../practice/sheet.ts';
import { answersKey, type Brought, rawTries, sheetsIn } from '../../../practice/statistics/rawTries.ts';
import { gradedTry, type Left, sorted, type Tried, type Tries } from '../../../practice/statistics/tries.ts';
import { loadPractice } from '../../device/practice.ts';

/** For so long (ms) tries are graded before the page may do something else. */
const AT_ONCE = 30;
const breathe = () => new Promise((done) => setTimeout(done, 0));

export interface Graded extends Tries {
  readonly practice: Practice;
}

export interface Grading {
  /** What the files came to; `null` until the first are graded. */
  readonly graded: Graded | null;
  /** While it grades: how many of how many are done. */
  readonly busy: { readonly done: number; readonly of: number } | null;
  readonly failed: string;
}

/** Grades what the files hold, a few at a time: whole runs are drawn for some, and a page that stands still looks broken. */
export function useTries(brought: readonly Brought[], lang: string): Grading {
  const [grading, setGrading] = useState<Grading>({ graded: null, busy: null, failed: '' });
  // A draw and its answers fix the grade: what was graded for an earlier file is not graded again.
  const known = useRef(new Map<string, Tried | Left>());
  // Fetched before any file is in, so that the page works on without a signal.
  useEffect(() => {
    void loadPractice().catch(() => undefined);
  }, []);
  useEffect(() => {
    if (brought.length === 0) return;
    let current = true;
    const grade = async () => {
      const practice = await loadPractice();
      const sheets = sheetsIn(brought, practice);
      const raws = rawTries(brought, sheets);
      const all: (Tried | Left)[] = [];
      let since = performance.now();
      for (const raw of raws) {
        const key = JSON.stringify([raw.who, raw.name, raw.on, raw.left, answersKey(raw)]);
        const one = known.current.get(key) ?? gradedTry(raw, practice, lang);
        known.current.set(key, one);
        all.push(one);
        if (performance.now() - since < AT_ONCE) continue;
        setGrading((before) => ({ ...before, busy: { done: all.length, of: raws.length } }));
        await breathe();
        if (!current) return;
        since = performance.now();
      }
      if (current) setGrading({ graded: { ...sorted(all, sheets), practice }, busy: null, failed: '' });
    };
    grade().catch((why: unknown) => {
      if (current)
        setGrading({ graded: null, busy: null, failed: why instanceof Error ? why.message : String(why) });
    });
    return () => {
      current = false;
    };
  }, [brought, lang]);
  return grading;
}

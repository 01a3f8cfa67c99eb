import { describe, expect, test } from 'vitest';
import type { Asked, Told } from '../../../src/site/sticks/messages.ts';
import { look, type News, type Parts, type WorkerLike } from '../../../src/site/sticks/solver.ts';
import type { Answered } from '../../../src/trade/answer.ts';
import { fromInches as L } from '../../../src/trade/length.ts';
import { sticks } from '../../../src/trade/sticks/sticks.ts';
import type { SticksResult } from '../../../src/trade/sticks/types.ts';

const asked: Asked = {
  given: { stock: [{ length: L(240) }], pieces: [{ length: L(60), count: 9 }], kerf: L(0) },
  seconds: 60,
};
const good = sticks(asked.given);
const plan = (newStockIn: number, lowerBoundIn = 240): Answered<SticksResult> => ({
  ...good,
  result: { ...good.result, newStockIn, lowerBoundIn },
});

class Hired implements WorkerLike {
  readonly posted: Asked[] = [];
  ended = false;
  onmessage: ((event: MessageEvent<Told>) => void) | null = null;
  onerror: ((event: ErrorEvent) => void) | null = null;
  postMessage(one: Asked): void {
    this.posted.push(one);
  }
  terminate(): void {
    this.ended = true;
  }
  tell(told: Told): void {
    this.onmessage?.({ data: told } as MessageEvent<Told>);
  }
}

/** A search whose clock stands still, or is late from the first look at it. */
async function begun(late: boolean, other: Partial<Parts> = {}, one = asked) {
  const heard: News[] = [];
  const hired: Hired[] = [];
  let time = 0;
  const stop = look(one, (news) => heard.push(news), {
    load: async () => (given, budget) => {
      time = late ? 1000 : 0;
      budget.stop?.();
      return late ? plan(960) : sticks(given, budget);
    },
    worker: () => {
      const own = new Hired();
      hired.push(own);
      return own;
    },
    now: () => time,
    ...other,
  });
  await new Promise((next) => setTimeout(next));
  return { heard, hired, stop };
}
const hows = (heard: readonly News[]) =>
  heard.map((one) => (one.news === 'plan' ? [one.how, one.plan.result.newStockIn] : [one.news]));

test('a small job is done at once, and no worker is started', async () => {
  const { heard, hired } = await begun(false);
  expect(hows(heard)).toEqual([['ended', 720]]);
  expect(hired).toEqual([]);
});

describe('a job that takes longer', () => {
  test('is handed to a worker whole; the plan so far stands meanwhile, then every better one', async () => {
    const { heard, hired } = await begun(true);
    expect(hired.map(({ posted }) => posted)).toEqual([[asked]]);
    hired[0]?.tell({ told: 'better', answered: plan(720) });
    hired[0]?.tell({ told: 'end', answered: plan(720), late: false });
    expect(hows(heard)).toEqual([
      ['looking', 960],
      ['looking', 720],
      ['ended', 720],
    ]);
    expect(hired[0]?.ended).toBe(true);
  });
  test('what the worker begins with does not replace a better plan or bound', async () => {
    const { heard, hired } = await begun(true);
    hired[0]?.tell({ told: 'better', answered: plan(1200) });
    hired[0]?.tell({ told: 'better', answered: plan(960, 0) });
    hired[0]?.tell({ told: 'better', answered: plan(960, 480) });
    expect(heard.map((one) => (one.news === 'plan' ? one.plan.result.lowerBoundIn : null))).toEqual([
      ...[240, 240, 240, 480],
    ]);
    expect(hows(heard).every(([, stock]) => stock === 960)).toBe(true);
  });
  test('says when its time ran out', async () => {
    const { heard, hired } = await begun(true);
    hired[0]?.tell({ told: 'end', answered: plan(960), late: true });
    expect(hows(heard).at(-1)).toEqual(['late', 960]);
  });
  test('stopped, it ends the worker and nothing more is heard', async () => {
    const { heard, hired, stop } = await begun(true);
    stop();
    expect(hired[0]?.ended).toBe(true);
    hired[0]?.tell({ told: 'better', answered: plan(720) });
    expect(hows(heard)).toEqual([['looking', 960]]);
  });
  test('goes on with what it has where no worker can be started, or it breaks', async () => {
    const none = await begun(true, {
      worker: () => {
        throw new Error('no worker');
      },
    });
    expect(hows(none.heard)).toEqual([
      ['looking', 960],
      ['lost', 960],
    ]);
    const broken = await begun(true);
    broken.hired[0]?.onerror?.({} as ErrorEvent);
    expect(hows(broken.heard).at(-1)).toEqual(['lost', 960]);
    expect(broken.hired[0]?.ended).toBe(true);
  });
});

test('stopped before the search was loaded, it never begins', async () => {
  const heard: News[] = [];
  const stop = look(asked, (news) => heard.push(news));
  stop();
  await new Promise((next) => setTimeout(next, 50));
  expect(heard).toEqual([]);
});

test('a search that cannot be loaded says so', async () => {
  const { heard } = await begun(false, { load: () => Promise.reject(new Error('no signal')) });
  expect(hows(heard)).toEqual([['noSolver']]);
});

test('what the core refuses is handed on with its faults', async () => {
  const long = { ...asked, given: { ...asked.given, pieces: [{ length: L(241), count: 1 }] } };
  const { heard } = await begun(false, {}, long);
  expect(heard).toMatchObject([{ news: 'refused', faults: [{ field: 'pieces[0].length' }] }]);
});

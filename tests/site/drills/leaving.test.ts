/** What is secret goes when the page is left or hidden, and after two minutes. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { IDLE, onLeaving } from '../../../src/site/device/leaving.ts';

class Page extends EventTarget {
  visibilityState = 'visible';
}
let page: Page;
let around: EventTarget;

beforeEach(() => {
  vi.useFakeTimers();
  page = new Page();
  around = new EventTarget();
  vi.stubGlobal('document', page);
  vi.stubGlobal('addEventListener', around.addEventListener.bind(around));
  vi.stubGlobal('removeEventListener', around.removeEventListener.bind(around));
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

test('two minutes, and not a moment sooner', () => {
  expect(IDLE).toBe(120_000);
  const forget = vi.fn();
  onLeaving(forget);
  vi.advanceTimersByTime(119_999);
  expect(forget).not.toHaveBeenCalled();
  vi.advanceTimersByTime(1);
  expect(forget).toHaveBeenCalledOnce();
});

test('hidden or left; coming back is no leaving', () => {
  const forget = vi.fn();
  onLeaving(forget);
  page.dispatchEvent(new Event('visibilitychange'));
  expect(forget).not.toHaveBeenCalled();
  page.visibilityState = 'hidden';
  page.dispatchEvent(new Event('visibilitychange'));
  expect(forget).toHaveBeenCalledTimes(1);
  around.dispatchEvent(new Event('pagehide'));
  expect(forget).toHaveBeenCalledTimes(2);
});

test('once it is stopped, nothing more is heard', () => {
  const forget = vi.fn();
  onLeaving(forget)();
  page.visibilityState = 'hidden';
  page.dispatchEvent(new Event('visibilitychange'));
  around.dispatchEvent(new Event('pagehide'));
  vi.advanceTimersByTime(IDLE);
  expect(forget).not.toHaveBeenCalled();
});

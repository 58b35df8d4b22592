import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { Touched } from '../../../client/shell/touched.ts';
import type { TaskId } from '../../../shared/kernel/index.ts';

const square = 'ribs-1/square' as TaskId;

let touched: Touched;

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'performance'] });
  touched = new Touched(() => {});
});
afterEach(() => {
  touched.stop();
  vi.useRealTimers();
});

const now = () => [touched.held.has(square), touched.undoOf(square)];

describe('a line that was finished', () => {
  it('stays for eight seconds, to be taken back', () => {
    touched.did({ kind: 'finish', task: square });
    vi.advanceTimersByTime(7_900);
    expect(now()).toEqual([true, 'finish']);
    vi.advanceTimersByTime(200);
    expect(now()).toEqual([false, null]);
  });

  it('stays as long as a weight is typed on it, and its undo no longer than ever', () => {
    touched.did({ kind: 'finish', task: square });
    vi.advanceTimersByTime(5_000);
    touched.picked(square);
    expect(now()).toEqual([true, 'finish']);
    vi.advanceTimersByTime(4_000);
    expect(now()).toEqual([true, null]);
    vi.advanceTimersByTime(20_000);
    touched.picked(square);
    vi.advanceTimersByTime(20_000);
    expect(now()).toEqual([true, null]);
    vi.advanceTimersByTime(11_000);
    expect(now()).toEqual([false, null]);
  });
});

import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { JustDone } from '../../../client/shell/just-done.ts';
import type { DishId, ServiceId } from '../../../shared/kernel/index.ts';
import type { Intent } from '../../../shared/view/index.ts';

const ribs = 'ribs' as DishId;
const beans = 'beans' as DishId;
const back = (dish: DishId, sold: number): Intent => ({
  kind: 'sold',
  service: 'lunch' as ServiceId,
  dish,
  sold,
});

describe('what was just done on a screen', () => {
  beforeEach(() => vi.useFakeTimers());
  afterEach(() => vi.useRealTimers());

  it('is taken back step by step, the last first, each dish by itself', () => {
    const done = new JustDone(() => {});
    done.did(ribs, back(ribs, 0));
    done.did(beans, back(beans, 7));
    done.did(ribs, back(ribs, 1));
    expect(done.take(ribs)).toEqual(back(ribs, 1));
    expect(done.take(ribs)).toEqual(back(ribs, 0));
    expect(done.take(ribs)).toBeNull();
    expect(done.has(beans)).toBe(true);
    done.stop();
  });

  it('passes by itself some seconds after the last, and says so', () => {
    const changed = vi.fn();
    const done = new JustDone(changed);
    done.did(ribs, back(ribs, 0));
    vi.advanceTimersByTime(5_000);
    done.did(ribs, back(ribs, 1));
    vi.advanceTimersByTime(5_000);
    expect(done.take(ribs)).toEqual(back(ribs, 1));
    expect(done.has(ribs)).toBe(true);
    changed.mockClear();
    vi.advanceTimersByTime(3_100);
    expect(done.has(ribs)).toBe(false);
    expect(changed).toHaveBeenCalled();
    done.stop();
  });
});

// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { readSettings, remember, rememberToken } from '../../../client/shell/settings.ts';
import { onWake } from '../../../client/shell/wake.ts';

let woken: number;
let stop: () => void;
let seen: DocumentVisibilityState;

beforeEach(() => {
  woken = 0;
  seen = 'visible';
  vi.spyOn(document, 'visibilityState', 'get').mockImplementation(() => seen);
  stop = onWake(() => {
    woken += 1;
  });
});
afterEach(() => {
  stop();
  vi.restoreAllMocks();
});

const shown = (persisted: boolean) =>
  dispatchEvent(Object.assign(new Event('pageshow'), { persisted }));

describe('a page that slept', () => {
  it('wakes when it is looked at again, and not when it is put away', () => {
    seen = 'hidden';
    document.dispatchEvent(new Event('visibilitychange'));
    expect(woken).toBe(0);
    seen = 'visible';
    document.dispatchEvent(new Event('visibilitychange'));
    expect(woken).toBe(1);
  });

  it('wakes when its network is back, and when the browser lets it go on', () => {
    dispatchEvent(new Event('online'));
    document.dispatchEvent(new Event('resume'));
    expect(woken).toBe(2);
  });

  it('wakes when the browser shows it again as it was, not when it is shown first', () => {
    shown(false);
    expect(woken).toBe(0);
    shown(true);
    expect(woken).toBe(1);
  });

  it('hears nothing more once it is left', () => {
    stop();
    dispatchEvent(new Event('online'));
    document.dispatchEvent(new Event('resume'));
    expect(woken).toBe(0);
  });
});

describe('a private window that keeps nothing', () => {
  it('has a screen that works, with an id, and forgets what is set', () => {
    const refused = () => {
      throw new DOMException('denied', 'SecurityError');
    };
    vi.spyOn(Storage.prototype, 'getItem').mockImplementation(refused);
    vi.spyOn(Storage.prototype, 'setItem').mockImplementation(refused);
    const settings = readSettings(new URLSearchParams('language=es'));
    expect(settings).toMatchObject({ language: 'es', token: null });
    expect(settings.screenId).not.toBe('');
    remember('language', 'en');
    expect(rememberToken('let in')).toBe(false);
  });
});

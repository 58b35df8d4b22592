// @vitest-environment happy-dom
import { afterEach, describe, expect, it, vi } from 'vitest';
import { tabDrainer } from '../../../client/sync/index.ts';

class Channel extends EventTarget {
  postMessage() {}
  close() {}
}

/** A page whose browser answers a request for a lock so. */
function page(request: (granted: () => Promise<void>) => Promise<void>) {
  let asked = 0;
  const locks = {
    request(_name: string, _options: LockOptions, granted: () => Promise<void>) {
      asked += 1;
      return request(granted);
    },
  };
  vi.stubGlobal('BroadcastChannel', Channel);
  vi.stubGlobal('navigator', { locks });
  const drainer = tabDrainer('coalface station trim');
  let mine = 0;
  drainer.listen({ mine: () => (mine += 1), news: () => {} });
  return { drainer, asked: () => asked, mine: () => mine };
}

const turns = () => new Promise((done) => setTimeout(done, 20));

afterEach(() => vi.unstubAllGlobals());

describe('the sending of taps where several tabs share them', () => {
  it('is the tab’s that has the lock', async () => {
    const { drainer, mine } = page((granted) => granted());
    await turns();
    expect([drainer.isMine, mine()]).toEqual([true, 1]);
    drainer.close();
  });

  it('is every tab’s where the browser gives no locks, as in a private window', async () => {
    const { drainer, asked, mine } = page(() =>
      Promise.reject(new DOMException('denied', 'SecurityError')),
    );
    await turns();
    expect([drainer.isMine, mine()]).toEqual([true, 1]);
    expect(asked()).toBe(1);
    drainer.close();
  });

  it('is waited for by a tab that another has taken it from', async () => {
    let times = 0;
    const { drainer, asked } = page((granted) => {
      times += 1;
      void granted();
      if (times > 1) return new Promise(() => {});
      return Promise.reject(new DOMException('stolen', 'AbortError'));
    });
    await turns();
    expect(asked()).toBe(2);
    drainer.close();
  });
});

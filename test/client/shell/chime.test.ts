import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';

/** What a loudspeaker was told to play, in Hz. */
let played: number[] = [];

/** A browser's way to sound, which may have to wait for a finger. */
class Speaker {
  static allowed: Promise<void> = Promise.resolve();
  readonly currentTime = 0;
  readonly destination = {};
  resume = () => Speaker.allowed;
  createOscillator() {
    const frequency = { value: 0 };
    return {
      frequency,
      connect: (to: unknown) => to,
      start: () => played.push(frequency.value),
      stop: () => {},
    };
  }
  createGain() {
    const level = { setValueAtTime: () => {}, exponentialRampToValueAtTime: () => {} };
    return { gain: level, connect: (to: unknown) => to };
  }
}

/** Each test in a page of its own: a page has one loudspeaker. */
async function page() {
  vi.resetModules();
  return (await import('../../../client/shell/chime.ts')).chime;
}

beforeEach(() => {
  played = [];
  Speaker.allowed = Promise.resolve();
  vi.stubGlobal('AudioContext', Speaker);
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

describe('a call', () => {
  it('is two tones, the second lower, once', async () => {
    await (await page())();
    expect(played).toEqual([660, 495]);
  });

  it('fails nobody where a device cannot sound', async () => {
    vi.stubGlobal('AudioContext', undefined);
    await expect((await page())()).resolves.toBeUndefined();
    vi.stubGlobal('AudioContext', Speaker);
    Speaker.allowed = Promise.reject(new Error('no device'));
    await expect((await page())()).resolves.toBeUndefined();
    expect(played).toEqual([]);
  });

  it('is not made up for where nobody had touched the page yet', async () => {
    vi.useFakeTimers({ toFake: ['performance', 'setTimeout'] });
    Speaker.allowed = new Promise((touched) => setTimeout(touched, 600_000));
    const chime = await page();
    const calls = [chime(), chime()];
    await vi.advanceTimersByTimeAsync(600_000);
    await Promise.all(calls);
    expect(played).toEqual([]);
    await chime();
    expect(played).toEqual([660, 495]);
  });
});

// @vitest-environment happy-dom
import { afterEach, expect, it, vi } from 'vitest';
import { forgetLikeness } from '../../../client/shell/forget-likeness.ts';
import type { Sync } from '../../../client/sync/index.ts';

afterEach(() => vi.unstubAllGlobals());

it('has the likeness of a wall forgotten as soon as its screen may not show the day', () => {
  const told: unknown[] = [];
  const controller = { postMessage: (word: unknown) => told.push(word) };
  vi.stubGlobal('navigator', { serviceWorker: { controller } });
  const state: { blank: object | null } = { blank: null };
  let changed = () => {};
  const subscribe = (listener: () => void) => {
    changed = listener;
    return () => {};
  };
  forgetLikeness({ state, subscribe } as unknown as Sync);
  changed();
  expect(told).toEqual([]);
  state.blank = { rule: 'screen-revoked' };
  changed();
  expect(told).toEqual(['forget']);
});

it('does nothing where the browser keeps nothing', () => {
  vi.stubGlobal('navigator', {});
  const subscribe = (listener: () => void) => {
    listener();
    return () => {};
  };
  expect(() =>
    forgetLikeness({ state: { blank: {} }, subscribe } as unknown as Sync),
  ).not.toThrow();
});

// @vitest-environment happy-dom
import { describe, expect, it } from 'vitest';
import { Lift } from '../../../client/hands/lift.ts';

const button = () => {
  const place = document.createElement('button');
  place.getBoundingClientRect = () => new DOMRect(100, 100, 80, 80);
  return place;
};

const touch = (more: { id?: number; xPx?: number; atMs?: number } = {}) => ({
  ...{ id: 1, xPx: 140, yPx: 140, atMs: 0 },
  ...more,
});

describe('a finger that leaves the glass', () => {
  it('taps the place that it came down on, once', () => {
    const lift = new Lift();
    const place = button();
    lift.down(touch(), place);
    expect(lift.take()).toBeNull();
    lift.up(touch({ atMs: 3_000 }));
    expect(lift.take()?.place).toBe(place);
    expect(lift.take()).toBeNull();
  });

  it('taps nothing where it slid, was another one, or came down on bare paper', () => {
    const lift = new Lift();
    lift.down(touch(), button());
    lift.up(touch({ xPx: 170 }));
    expect(lift.take()).toBeNull();
    lift.down(touch(), button());
    lift.up(touch({ id: 2 }));
    expect(lift.take()).toBeNull();
    lift.down(touch(), undefined);
    lift.up(touch());
    expect(lift.take()).toBeNull();
  });

  it('taps nothing where its place has gone from under it', () => {
    const lift = new Lift();
    const place = button();
    lift.down(touch(), place);
    place.getBoundingClientRect = () => new DOMRect(400, 100, 80, 80);
    lift.up(touch());
    expect(lift.take()).toBeNull();
  });
});

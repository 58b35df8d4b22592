import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { HubClock } from '../../../client/sync/hub-clock.ts';
import { instant } from '../../../shared/kernel/index.ts';

class Device {
  monotonic = 1_000;
  wall = 5_000_000;
  monotonicMs = () => this.monotonic;
  wallMs = () => this.wall;
}

const HUB = 1_795_600_000_000;

/**
 * A beat that takes `outMs` to the hub and `backMs` from it; the hub is at HUB when the device is
 * at 0.
 */
function beat(device: Device, outMs: number, backMs: number, hub = HUB, speed = 1) {
  const t0 = device.monotonic;
  const atHub = instant(hub + (t0 + outMs) * speed);
  device.monotonic = t0 + outMs + backMs;
  return { t0, t1: atHub, t2: atHub, t3: device.monotonic, speed };
}

describe('the clock of the hub, as a screen knows it', () => {
  it('is right to half a trip, however wrong the device is', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -1e12, max: 1e12 }),
        fc.array(fc.tuple(fc.integer({ min: 0, max: 900 }), fc.integer({ min: 0, max: 900 })), {
          minLength: 1,
          maxLength: 20,
        }),
        (wallMs, trips) => {
          const device = new Device();
          device.wall = wallMs;
          const clock = new HubClock(device);
          for (const [out, back] of trips) clock.take(beat(device, out, back));
          device.monotonic += 60_000;
          const shortest = Math.min(...trips.map(([out, back]) => out + back));
          const error = Math.abs(clock.now() - (HUB + device.monotonic));
          expect(error).toBeLessThanOrEqual(shortest / 2 + 2);
        },
      ),
    );
  });

  it('goes on by the monotonic clock when the hub is away and the device clock is set', () => {
    const device = new Device();
    const clock = new HubClock(device);
    clock.take(beat(device, 2, 2));
    device.wall -= 3_600_000;
    device.monotonic += 600_000;
    expect(clock.now()).toBe(HUB + device.monotonic);
  });

  it('nears a better measurement slowly, and never by a step that a countdown shows', () => {
    const device = new Device();
    const clock = new HubClock(device);
    clock.take(beat(device, 0, 800));
    const before = clock.now();
    clock.take(beat(device, 1, 1));
    expect(clock.now() - before).toBeLessThan(50);
    device.monotonic += 60_000;
    expect(clock.now()).toBe(HUB + device.monotonic);
  });

  it('takes a step where it is off by more than two seconds', () => {
    const device = new Device();
    const clock = new HubClock(device);
    clock.take(beat(device, 1, 1));
    clock.take(beat(device, 1, 1, HUB + 10_000));
    expect(clock.now()).toBe(HUB + 10_000 + device.monotonic);
  });

  it('drops the old measurements when the monotonic clock stood still in sleep', () => {
    const device = new Device();
    const clock = new HubClock(device);
    clock.take(beat(device, 1, 1));
    // Asleep for 1.5 s that the device did not count; the new trips are longer than the old.
    clock.take(beat(device, 40, 40, HUB + 1500));
    device.monotonic += 60_000;
    expect(clock.now()).toBe(HUB + 1500 + device.monotonic);
  });

  it('takes the stamp of a view for the time until a beat is back', () => {
    const device = new Device();
    const clock = new HubClock(device);
    clock.guess(instant(HUB));
    device.monotonic += 5000;
    expect(clock.now()).toBe(HUB + 5000);
  });

  it('runs as fast as the hub of a demo does', () => {
    const device = new Device();
    const clock = new HubClock(device);
    clock.take(beat(device, 1, 1, HUB, 60));
    device.monotonic += 10_000;
    expect(clock.now()).toBe(HUB + device.monotonic * 60);
  });
});

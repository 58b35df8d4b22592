import { describe, expect, it } from 'vitest';
import { must, type ScreenId, type TaskId } from '../../shared/kernel/index.ts';
import type { Command } from '../../shared/view/index.ts';
import { Agenda } from './agenda.ts';
import { Chance } from './chance.ts';
import { Device } from './device.ts';
import { DeviceClock, type DeviceClockParts } from './device-clock.ts';
import { Journal } from './journal.ts';
import { Way } from './way.ts';

const task = 'lunch-slab-1/trim' as TaskId;

/** A device in a kitchen whose hub is not there. */
function alone(clockParts: Partial<DeviceClockParts> = {}) {
  const agenda = new Agenda();
  const chance = Chance.ofSeed(1);
  const journal = new Journal(() => agenda.nowMs);
  const clock = new DeviceClock({
    agenda,
    driftPpm: 0,
    wallErrorMs: 0,
    standsStillAsleep: false,
    ...clockParts,
  });
  const kept: Command[] = [];
  const device = new Device({
    screenId: 'pit-1' as ScreenId,
    face: { kind: 'smoker' },
    agenda,
    chance,
    journal,
    clock,
    way: new Way({ name: 'pit-1', agenda, chance, journal }),
    door: { host: () => null },
    watch: {
      kept: (command) => kept.push(command),
      changed: () => {},
      beaten: () => {},
      clockLost: () => {},
    },
  });
  device.load();
  return { agenda, clock, device, kept };
}

describe('a device', () => {
  it('keeps over a new page what it had written, and nothing else', async () => {
    const { agenda, device, kept } = alone();
    device.sync?.tap({ kind: 'start', task });
    await agenda.passTo(100);
    device.sync?.tap({ kind: 'finish', task });
    device.loadAnew();
    expect(device.sync).toBeNull();
    await agenda.passTo(5000);
    expect(kept.map(({ kind }) => kind)).toEqual(['start']);
    expect(device.page).toBe(2);
    const { pending } = must(device.sync, 'a new page').state;
    expect(pending.map(({ command, mark }) => [command.kind, mark])).toEqual([['start', 'here']]);
  });

  it('keeps a tap in its page alone while its store is full', async () => {
    const { agenda, device, kept } = alone();
    device.isStoreFull = true;
    device.sync?.tap({ kind: 'start', task });
    await agenda.passTo(100);
    expect(kept).toEqual([]);
    expect(device.sync?.state).toMatchObject({
      isOutboxFailing: true,
      pending: [{ mark: 'tapped' }],
    });
  });

  it('stands still in sleep, and does on waking what it missed', async () => {
    const { agenda, device } = alone();
    device.sync?.tap({ kind: 'start', task });
    const page = must(device.sync, 'a page');
    device.sleep();
    await agenda.passTo(60_000);
    expect(device.sync).toBeNull();
    expect(page.state).toMatchObject({ aloneSince: null, pending: [{ mark: 'tapped' }] });
    device.wake();
    await agenda.passTo(60_200);
    expect(device.sync).toBe(page);
    expect(page.state).toMatchObject({ pending: [{ mark: 'here' }] });
    expect(page.state.aloneSince).not.toBeNull();
  });
});

describe('the clocks of a device', () => {
  it('drift, and its timers with them', async () => {
    const { agenda, clock } = alone({ driftPpm: 200 });
    const before = clock.monotonicMs();
    await agenda.passTo(1_000_000);
    expect(clock.monotonicMs() - before).toBeCloseTo(1_000_200);
    expect(clock.worldMs(1_000_200)).toBeCloseTo(1_000_000);
  });

  it('can be set in the time of day alone', () => {
    const { clock } = alone();
    const [wallMs, monotonicMs] = [clock.wallMs(), clock.monotonicMs()];
    clock.setBy(-3_600_000);
    expect(clock.wallMs() - wallMs).toBe(-3_600_000);
    expect(clock.monotonicMs()).toBe(monotonicMs);
  });

  it.each([
    [true, 0],
    [false, 60_000],
  ])('stand still in sleep on some devices: %s', async (standsStillAsleep, passedMs) => {
    const { agenda, clock, device } = alone({ standsStillAsleep });
    const before = clock.monotonicMs();
    device.sleep();
    await agenda.passTo(60_000);
    device.wake();
    expect(clock.monotonicMs() - before).toBe(passedMs);
  });
});

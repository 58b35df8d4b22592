// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { ClockTime } from '../../../client/parts/clock-time.ts';
import { NextRow } from '../../../client/parts/next-row.ts';
import { NowLine } from '../../../client/parts/now-line.ts';
import { TapRing } from '../../../client/parts/tap-ring.ts';
import { ThenFoot } from '../../../client/parts/then-foot.ts';
import { WallHead } from '../../../client/parts/wall-head.ts';
import { StationWall } from '../../../client/station/station-wall.ts';
import { createSync, memoryOutbox, type Outbox, soleDrainer } from '../../../client/sync/index.ts';
import { instant, type ScreenId } from '../../../shared/kernel/index.ts';
import type { StationView } from '../../../shared/view/index.ts';
import { buttonsOf, drawn, tap } from '../fingers.ts';
import { injectShoulders, stationView } from '../fixtures.ts';
import { HUB_START, StagedHub, StagedTime } from '../sync/staged.ts';

/** A line runs, and beside it one is due. */
const busy: StationView = {
  ...stationView,
  tasks: stationView.tasks.map((task) =>
    task.id === injectShoulders.id ? { ...task, startAt: instant(HUB_START) } : task,
  ),
};

beforeEach(() => Object.assign(globalThis, { innerWidth: 1920, innerHeight: 1080 }));
afterEach(async () => {
  vi.useRealTimers();
  // Nothing is left to come of a test's ink.
  await frame();
  vi.restoreAllMocks();
  document.body.replaceChildren();
});

/** A station's wall with a sync of its own, before a hub that says what a test has it say. */
async function wallBefore(outbox: Outbox) {
  const time = new StagedTime();
  const hub = new StagedHub(time);
  const face = { kind: 'station', station: busy.stations[0]?.id as never } as const;
  let taps = 0;
  const ids = { newId: () => `tap-${++taps}`, screenId: 'a-screen' as ScreenId };
  const from = { openLink: hub.open, outbox, clock: time, timers: time, drainer: soleDrainer() };
  const sync = createSync({ ...from, ...ids, face });
  const shows = (view: StationView) => hub.listener?.view({ epoch: 'one', seq: view.seq, view });
  hub.up();
  shows(busy);
  await drawn();
  const wall = Object.assign(new StationWall(), { sync });
  document.body.append(wall);
  await drawn();
  return { wall, shows };
}

/** The same, and what its disk has been asked to keep, in that order. */
async function wallWithDisk(put = memoryOutbox().put) {
  const asked: string[] = [];
  const noted: Outbox['put'] = (kept) => {
    asked.push(kept.command.kind);
    return put(kept);
  };
  return { ...(await wallBefore({ ...memoryOutbox(), put: noted })), asked };
}

/** How often each kind of part was drawn since. */
function drawings() {
  const kinds = { StationWall, WallHead, NowLine, NextRow, ThenFoot, ClockTime, TapRing };
  const spies = Object.entries(kinds).map(([name, kind]) => {
    const { prototype } = kind as unknown as { prototype: { render(): unknown } };
    return [name, vi.spyOn(prototype, 'render')] as const;
  });
  return () =>
    Object.fromEntries(
      spies.flatMap(([name, { mock }]) => (mock.calls.length ? [[name, mock.calls.length]] : [])),
    );
}

const frame = () => new Promise((resolve) => setTimeout(resolve, 60));

/** Whether the ring of that name has ink of its own; null where there is none of that name. */
const hasInk = (wall: StationWall, name: string) => {
  const [, button] = buttonsOf(wall).find(([each]) => each.startsWith(name)) ?? [];
  return button ? ringOf(button).hasAttribute('inked') : null;
};

const ringOf = (button: Element) => (button.getRootNode() as ShadowRoot).host;

describe('the ink of a tap on a ring', () => {
  it('is there before the outbox has it, and before anything else is drawn', async () => {
    const { wall, asked } = await wallWithDisk(() => new Promise(() => {}));
    expect(wall.shadowRoot?.querySelectorAll('now-line')).toHaveLength(2);
    const wasDrawn = drawings();
    await tap(wall, 'start: Inject six shoulders');
    expect(hasInk(wall, 'start: Inject six shoulders')).toBe(true);
    // Both drawings of a ring are on the glass before it is tapped.
    expect(wasDrawn()).toEqual({});
    // Nor has the disk been asked: its answers would come before the frame.
    expect(asked).toEqual([]);
    await vi.waitFor(() => expect(asked).toEqual(['start']));
  });

  it('is followed by taps in the order of the fingers, inked or not', async () => {
    const { wall, asked } = await wallWithDisk();
    await tap(wall, 'start: Inject six shoulders');
    await tap(wall, 'help');
    await tap(wall, 'finish: Square spare ribs');
    await vi.waitFor(() => expect(asked).toEqual(['start', 'needHelp', 'finish']));
  });

  it('loses no tap where the page has no more frames', async () => {
    const { wall, asked } = await wallWithDisk();
    vi.spyOn(globalThis, 'requestAnimationFrame').mockReturnValue(0 as never);
    await tap(wall, 'start: Inject six shoulders');
    await vi.waitFor(() => expect(asked).toEqual(['start']));
  });

  it('loses no tap on a line that leaves the wall meanwhile', async () => {
    const { wall, asked } = await wallWithDisk();
    await tap(wall, 'start: Inject six shoulders');
    for (const line of wall.shadowRoot?.querySelectorAll('now-line') ?? []) line.remove();
    await vi.waitFor(() => expect(asked).toEqual(['start']));
  });

  it('is told once, however often the finger comes down before it is seen', async () => {
    const { wall, asked } = await wallWithDisk();
    await tap(wall, 'start: Inject six shoulders');
    await tap(wall, 'start: Inject six shoulders');
    await vi.waitFor(() => expect(asked).toEqual(['start']));
    await frame();
    expect(asked).toEqual(['start']);
  });

  it('is followed by the rest of the wall after the frame', async () => {
    const { wall } = await wallBefore(memoryOutbox());
    await tap(wall, 'start: Inject six shoulders');
    // A busy machine takes its time over a frame.
    await vi.waitFor(() => expect(hasInk(wall, 'undo: Inject six shoulders')).toBe(false));
  });

  it('goes where the tap comes to nothing', async () => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    const ring = Object.assign(new TapRing(), { ring: 'thin', word: 'start', name: 'start' });
    document.body.append(ring);
    await drawn();
    await tap(ring, 'start');
    expect(ring.hasAttribute('inked')).toBe(true);
    await vi.advanceTimersByTimeAsync(1_000);
    expect(ring.hasAttribute('inked')).toBe(false);
  });
});

describe('a wall that hears much', () => {
  it('is drawn once for all that comes within a frame', async () => {
    const { wall, shows } = await wallBefore(memoryOutbox());
    const wasDrawn = drawings();
    const [first, ...others] = busy.tasks;
    for (let counted = 1; counted <= 20; counted++) {
      const tasks = first ? [{ ...first, counted }, ...others] : [];
      shows({ ...busy, seq: busy.seq + counted, tasks });
      await drawn();
    }
    await frame();
    expect(wasDrawn()['StationWall']).toBe(1);
    expect(saidIn(wall, 'tally-strokes')).toContain('20');
  });

  it('draws nothing of its parts anew that says the same', async () => {
    const { wall, shows } = await wallBefore(memoryOutbox());
    const wasDrawn = drawings();
    const at = instant(HUB_START + 1_000);
    shows({ ...busy, seq: busy.seq + 1, at });
    await frame();
    expect(wall.isConnected).toBe(true);
    const { NextRow: rows, ThenFoot: foot, ClockTime: clocks, StationWall: walls } = wasDrawn();
    expect({ rows, foot, clocks, walls }).toEqual({ walls: 1 });
  });
});

/** All that is written in the parts of one kind. */
function saidIn(wall: StationWall, part: string): string {
  const lines = [...(wall.shadowRoot?.querySelectorAll('now-line') ?? [])];
  const parts = lines.flatMap((line) => [...(line.shadowRoot?.querySelectorAll(part) ?? [])]);
  return parts.map((each) => each.shadowRoot?.textContent ?? '').join(' ');
}

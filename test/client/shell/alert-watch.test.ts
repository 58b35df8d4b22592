import { describe, expect, it } from 'vitest';
import { AlertWatch, linkWithCalls } from '../../../client/shell/alert-watch.ts';
import { instant, type ScreenId } from '../../../shared/kernel/index.ts';
import type {
  Hello,
  HubLink,
  HubLinkListener,
  OpenLink,
  Wanted,
} from '../../../shared/protocol/index.ts';

const NOW = instant(Date.UTC(2026, 2, 4, 18));

const wanted = (calledAt: number | null, isHeard = true): Wanted => ({
  ...{ notices: [], rates: [], isHeard },
  calledAt: calledAt === null ? null : instant(calledAt),
});

/** How often a screen sounds that is told this in turn; null where its link is lost. */
function heard(told: readonly (Wanted | null)[]) {
  let sounds = 0;
  const watch = new AlertWatch({
    now: () => NOW,
    changed: () => {},
    call: () => {
      sounds += 1;
    },
  });
  for (const each of told) watch.take(each);
  return sounds;
}

describe('a screen that is put up to sound', () => {
  it('sounds once for a call, however often it hears of it', () => {
    expect(heard([wanted(null), wanted(NOW - 5_000), wanted(NOW - 5_000)])).toBe(1);
    expect(heard([wanted(NOW - 5_000), null, wanted(NOW - 5_000)])).toBe(1);
  });

  it('sounds for each new call', () => {
    expect(heard([wanted(NOW - 20_000), wanted(NOW - 1_000)])).toBe(2);
  });

  it('is silent while another one sounds, and for what is long past', () => {
    expect(heard([wanted(NOW - 5_000, false)])).toBe(0);
    expect(heard([wanted(NOW - 600_000)])).toBe(0);
  });

  it('sounds from the first call after it has taken over', () => {
    const before = wanted(NOW - 30_000, false);
    expect(heard([before, wanted(NOW - 30_000), wanted(NOW)])).toBe(1);
  });

  it('sounds when it takes over what the other, whose link was dead, may not have heard', () => {
    expect(heard([wanted(NOW - 8_000, false), wanted(NOW - 8_000)])).toBe(1);
    expect(heard([wanted(NOW - 20_000, false), wanted(NOW - 20_000)])).toBe(0);
  });
});

describe('a link that brings calls as well', () => {
  const hello: Hello = { protocol: 2, screenId: 'pit' as ScreenId, face: { kind: 'smoker' } };

  /** What the hub is told at the opening, and what the screen hears of what the hub says. */
  function opened(sounds: boolean) {
    const told: unknown[] = [];
    const said: Hello[] = [];
    let hub: HubLinkListener | null = null;
    const open: OpenLink = (greet, listener) => {
      said.push(greet());
      hub = listener;
      return {} as HubLink;
    };
    const hear = (what: string) => () => void told.push(what);
    linkWithCalls(open, sounds, (each) => told.push(each))(() => hello, {
      ...{ up: hear('up'), down: hear('down'), view: hear('view'), blank: hear('blank') },
      ...{ reload: hear('reload'), readOnly: hear('readOnly') },
    });
    return { said, told, hub: hub as unknown as Required<HubLinkListener> };
  }

  it('says whether the screen is put up to sound', () => {
    expect(opened(true).said).toEqual([{ ...hello, sounds: true }]);
    expect(opened(false).said).toEqual([{ ...hello, sounds: false }]);
  });

  it('brings who is wanted, and nobody once it is down', () => {
    const { hub, told } = opened(true);
    hub.up();
    hub.wanted(wanted(NOW));
    hub.down();
    expect(told).toEqual(['up', wanted(NOW), null, 'down']);
  });
});

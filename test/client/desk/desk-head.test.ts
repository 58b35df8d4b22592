// @vitest-environment happy-dom
import { afterEach, describe, expect, it } from 'vitest';
import { DeskHead } from '../../../client/desk/desk-head.ts';
import { openLive } from '../../../shared/day/index.ts';
import { after, hours, minutes, seconds } from '../../../shared/kernel/index.ts';
import type { DeskView } from '../../../shared/view/index.ts';
import { viewOf } from '../../../shared/view/index.ts';
import type { Say } from '../../../shared/words/index.ts';
import { noon } from '../../shared/day/demo.ts';
import { atNoon } from '../../shared/day/demo-noon.ts';

const english: Say = {
  language: 'en',
  zone: 'America/Chicago',
  clock: '12 h',
  temperature: '°F',
  weight: 'lb',
};

const day = viewOf(openLive(atNoon().state, noon), { kind: 'desk' }) as DeskView;
const late: DeskView = {
  ...day,
  services: day.services.map((each) => ({ ...each, inHandS: minutes(-20) })),
  standings: day.standings.map((each) => ({ ...each, inHandS: minutes(-20) })),
};

async function head(view: DeskView, given: Partial<DeskHead> = {}) {
  const element = Object.assign(new DeskHead(), { view, say: english, now: noon, ...given });
  document.body.append(element);
  await element.updateComplete;
  const services = element.shadowRoot?.querySelector('service-standings');
  await (services as DeskHead | null)?.updateComplete;
  const text = (of: Element | null | undefined) =>
    of?.shadowRoot?.textContent?.replace(/\s+/g, ' ').trim() ?? '';
  return { said: text(element), services: text(services) };
}

afterEach(() => document.body.replaceChildren());

describe('the head of the desk', () => {
  it('says for which day it is and by which plan, and how every service stands', async () => {
    const { said, services } = await head(day);
    expect(said).toContain('Wed, Mar 4, plan 1');
    expect(services).toMatch(/Lunch, open till .* still to come: 10 min to spare Dinner 5:00 pm/);
  });

  it('says of a service that will be late what holds it up', async () => {
    const heldBy = { kind: 'begin', task: { en: 'Load ribs' } } as const;
    const standings = late.standings.map((each) => ({ ...each, heldBy }));
    expect((await head({ ...late, standings })).services).toContain('not begun: Load ribs');
    expect((await head(day)).services).not.toContain('not begun');
  });

  it('offers to mend a day that will be late, but not beside the box that does', async () => {
    expect((await head(late)).said).toContain('What would mend it?');
    expect((await head(late, { mending: true })).said).not.toContain('What would mend it?');
  });

  it('offers it from the first minute, as soon as it says late', async () => {
    const by = (inHandS: number): DeskView => ({
      ...late,
      overlong: [],
      services: day.services.map((each) => ({ ...each, inHandS: seconds(inHandS) })),
      standings: day.standings.map((each) => ({
        ...each,
        spread: null,
        inHandS: seconds(inHandS),
      })),
    });
    for (const inHandS of [-59, -60, -119, -121]) {
      const { said, services } = await head(by(inHandS));
      expect(said.includes('What would mend it?')).toBe(/min late/.test(services));
      document.body.replaceChildren();
    }
    expect((await head(by(-60))).services).toContain('1 min late');
  });

  it('says that nothing is to come once the services are over', async () => {
    const over = day.standings.map((each) => ({ ...each, inHandS: null }));
    const { services } = await head(
      { ...day, standings: over },
      { now: after(day.endsAt, hours(1)) },
    );
    expect(services).toBe('No service to come today.');
  });
});

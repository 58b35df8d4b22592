// @vitest-environment happy-dom
import { afterEach, describe, expect, it } from 'vitest';
import { DayLog } from '../../../client/desk/day-log.ts';
import type { Instant } from '../../../shared/kernel/index.ts';
import { after, celsius, hours, minutes } from '../../../shared/kernel/index.ts';
import type { Logged, LogLine } from '../../../shared/view/index.ts';
import type { Say } from '../../../shared/words/index.ts';
import { noon } from '../../shared/day/demo.ts';

const english: Say = {
  language: 'en',
  zone: 'America/Chicago',
  clock: '12 h',
  temperature: '°F',
  weight: 'lb',
};

const told = (seq: number, at: Instant, person: string | null, said: Logged): LogLine => {
  return { seq, at, sentAt: null, person, screen: null, said };
};
const smoker = { en: 'Long pit' };
const lines: readonly LogLine[] = [
  told(4, noon, 'Rosa', { kind: 'note', text: 'rain', about: null }),
  told(3, after(noon, minutes(-5)), null, {
    kind: 'read',
    where: smoker,
    load: null,
    slot: null,
    tempC: celsius(107.22),
  }),
  told(2, after(noon, minutes(-9)), 'Bea', { kind: 'note', text: 'ice', about: null }),
  told(1, after(noon, hours(-14)), null, { kind: 'plan', version: 1, takesBack: null }),
];

async function log(given: Partial<DayLog> = {}) {
  const element = Object.assign(new DayLog(), { lines, say: english, ...given });
  document.body.append(element);
  await element.updateComplete;
  const root = element.shadowRoot;
  if (!root) throw new Error('nothing drawn');
  const said = () =>
    [...root.querySelectorAll('h2, .said, p')].map((each) => each.textContent?.trim());
  const choose = async (value: string) => {
    const select = root.querySelector('select');
    Object.assign(select ?? {}, { value });
    select?.dispatchEvent(new Event('change'));
    await element.updateComplete;
  };
  const choices = () => [...root.querySelectorAll('option')].map((each) => each.textContent);
  return { element, said, choose, choices };
}

afterEach(() => document.body.replaceChildren());

describe('the log at the desk', () => {
  it('says under which day things happened: a night’s work is of the day before', async () => {
    const { said } = await log();
    expect(said()).toEqual([
      'Wed, Mar 4',
      'note: rain',
      'Long pit read 225 °F',
      'note: ice',
      'Tue, Mar 3',
      'plan 1 taken up',
    ]);
  });

  it('shows what one person did, or one kind of thing, and all again', async () => {
    const { said, choose, choices } = await log();
    expect(choices()).toContain('readings and checks');
    expect(choices().slice(-2)).toEqual(['Bea', 'Rosa']);
    await choose('by Rosa');
    expect(said()).toEqual(['Wed, Mar 4', 'note: rain']);
    await choose('readings');
    expect(said()).toEqual(['Wed, Mar 4', 'Long pit read 225 °F']);
    await choose('food');
    expect(said()).toEqual(['None of that today.']);
    await choose('all');
    expect(said()).toHaveLength(6);
  });

  it('still shows who is looked for when all of theirs is older than what is listed', async () => {
    const { element, said, choose, choices } = await log();
    await choose('by Rosa');
    element.lines = lines.slice(1);
    await element.updateComplete;
    expect(said()).toEqual(['None of that today.']);
    expect(choices()).toContain('Rosa');
  });

  it('says of what a screen kept while it was alone when it was sent', async () => {
    const [first] = lines;
    if (!first) throw new Error('a line');
    const { element } = await log({ lines: [{ ...first, sentAt: after(noon, minutes(4)) }] });
    const by = element.shadowRoot?.querySelector('.by');
    expect(by?.textContent).toBe('Rosa · offline, sent 12:04 pm');
  });
});

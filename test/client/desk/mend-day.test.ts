// @vitest-environment happy-dom
import { afterEach, describe, expect, it } from 'vitest';
import { MendDay } from '../../../client/desk/mend-day.ts';
import type { CommandId, ServiceId, TaskId } from '../../../shared/kernel/index.ts';
import { hours, instant, seconds } from '../../../shared/kernel/index.ts';
import type { MendShown, MendTaken, PlanAnswer } from '../../../shared/protocol/index.ts';
import type { DeskView, MendOffer, Overlong } from '../../../shared/view/index.ts';
import { mendWords, type Say, sayMendRung } from '../../../shared/words/index.ts';

const english: Say = {
  language: 'en',
  zone: 'UTC',
  clock: '24 h',
  temperature: '°C',
  weight: 'kg',
};
const said = mendWords.en;
const command = 'taken' as CommandId;

const offer: MendOffer = {
  basedOnSeq: 7,
  at: instant(0),
  rung: 'order',
  services: [],
  batches: [],
  overlong: { before: 0, after: 0 },
  changes: [],
  others: 0,
  wouldBe: [],
};

/** The day as the hub tells it: arranged by so manieth event, with the news of a command. */
const dayAt = (arrangedSeq: number, news: CommandId | null = null) =>
  ({
    services: [],
    standings: [],
    overlong: [],
    arrangedSeq,
    news: news && { command: news },
  }) as unknown as DeskView;

/** A desk that was offered what would mend its day; `answer` is the hub's, once it is taken. */
async function offered() {
  let answer: (taken: PlanAnswer<MendTaken>) => void = () => {};
  const doors = {
    mend: async (): Promise<PlanAnswer<MendShown>> => ({ ok: true, mend: { id: 'it', offer } }),
    takeMend: () =>
      new Promise<PlanAnswer<MendTaken>>((resolve) => {
        answer = resolve;
      }),
  };
  const desk = Object.assign(new MendDay(), { doors, say: english, view: dayAt(7) });
  document.body.append(desk);
  await desk.updateComplete;
  const tap = async (name: string) => {
    const boxes = [...(desk.shadowRoot?.querySelectorAll('button') ?? [])];
    boxes.find(({ textContent }) => textContent?.trim() === name)?.click();
    await settled(desk);
  };
  const show = async (view: DeskView) => {
    desk.view = view;
    await settled(desk);
  };
  await tap(said.ask);
  await tap(said.take);
  return {
    tap,
    show,
    answered: async (taken: PlanAnswer<MendTaken>) => {
      answer(taken);
      await settled(desk);
    },
    words: () => desk.shadowRoot?.textContent ?? '',
  };
}

async function settled(desk: MendDay) {
  for (let turn = 0; turn < 3; turn++) {
    await new Promise((resolve) => setTimeout(resolve));
    await desk.updateComplete;
  }
}

afterEach(() => document.body.replaceChildren());

describe('what mends a day, once it is taken', () => {
  it('points to the line above only when that line shows it', async () => {
    const { answered, show, words } = await offered();
    await answered({ ok: true, command });
    expect(words()).not.toContain(said.taken);
    await show(dayAt(8, command));
    expect(words()).toContain(said.taken);
  });

  it('points there when the day came before the answer', async () => {
    const { answered, show, words } = await offered();
    await show(dayAt(8, command));
    expect(words()).not.toContain(said.taken);
    expect(words()).not.toContain(said.goneOn);
    await answered({ ok: true, command });
    expect(words()).toContain(said.taken);
    expect(words()).not.toContain(said.take);
  });

  it('points there no more when the line above tells something else', async () => {
    const { answered, show, words } = await offered();
    await answered({ ok: true, command });
    await show(dayAt(8, command));
    await show(dayAt(9, 'another' as CommandId));
    expect(words()).not.toContain(said.taken);
    expect(words()).not.toContain(said.goneOn);
  });

  it('stands as it was offered till the day is there', async () => {
    const { answered, words } = await offered();
    await answered({ ok: true, command });
    expect(words()).toContain(said.rungs.order);
    expect(words()).not.toContain(said.goneOn);
  });

  it('says that the day has gone on where it was arranged anew by somebody else', async () => {
    const { answered, show, words } = await offered();
    await answered({ ok: false, refusal: { rule: 'out-of-date' } });
    await show(dayAt(8, 'another' as CommandId));
    expect(words()).toContain(said.goneOn);
    expect(words()).not.toContain(said.taken);
  });
});

const at = (hour: number) => instant(Date.UTC(2026, 10, 28, hour));

async function deskWith(view: Partial<DeskView>, say = english) {
  const desk = Object.assign(new MendDay(), { say, view: { ...dayAt(7), ...view } });
  document.body.append(desk);
  await desk.updateComplete;
  return (desk.shadowRoot?.textContent ?? '').replace(/\s+/g, ' ');
}

const service = (name: string, inHandS: number) =>
  ({ id: name, name: { en: name }, opensAt: at(17), inHandS, hangsOn: null }) as never;
const noChart = { bars: [], batches: [] } as unknown as DeskView['chart'];

const held = (title: string, more: object = {}): Overlong => ({
  task: title as TaskId,
  title: { en: title },
  batch: { en: 'Spare ribs · Dinner' },
  from: at(16),
  until: at(20),
  overAt: at(19),
  mostS: hours(3),
  byS: hours(1),
  next: null,
  isSold: true,
  ...more,
});

describe('what mend says before anybody asks', () => {
  it('says of a day that holds that it does, and which service has least to spare', async () => {
    const services = [service('Lunch', 3600), service('Dinner', 660)];
    const words = await deskWith({ services, chart: noChart });
    expect(words).toContain(said.holds);
    expect(words).toContain('Tightest: Dinner 17:00, 11 min to spare.');
    expect(words).not.toContain('Lunch');
  });

  it('does not say that a day holds whose cooks will likely make it late', async () => {
    const spread = { lowS: seconds(-8000), likelyS: seconds(-3300), highS: seconds(700) };
    const [opensAt, closesAt] = [instant(0), instant(7_200_000)];
    const dinner = { name: { en: 'Dinner' }, opensAt, closesAt, inHandS: seconds(1740), spread };
    const services = [service('Dinner', 1740)];
    const standings = [dinner] as never;
    const words = await deskWith({ services, standings, at: instant(-1), chart: noChart });
    expect(words).not.toContain(said.holds);
    expect(words).toContain(said.holdsByPlan);
    expect(words).toMatch(/Dinner 00:00, likely 55 min late, for its cooks may run long\./);
  });

  it('says of every late service by how much, and what it hangs on', async () => {
    const bar = { id: 'load', title: { en: 'Load short ribs' }, batch: 0 };
    const chart = { bars: [bar], batches: [{ en: 'Short ribs · Dinner' }] } as never;
    const dinner = { ...(service('Dinner', -1080) as object), hangsOn: 'load' } as never;
    const words = await deskWith({ services: [service('Lunch', -300), dinner], chart });
    expect(words).toContain('Lunch will be 5 min late.');
    expect(words).toContain(
      'Dinner will be 18 min late. It hangs on: Load short ribs, Short ribs · Dinner.',
    );
    expect(words).not.toContain(said.holds);
  });

  it('names what is held too long, since when, by how much, and what becomes of it', async () => {
    const words = await deskWith({ overlong: [held('Hold spare ribs')] });
    expect(words).toContain('Hold spare ribs, Spare ribs · Dinner: 1 h too long.');
    expect(words).toContain('16:00–20:00, 3 h at the most');
    expect(words).toContain('What is left at 19:00 is thrown out.');
  });

  it('counts several in its first line, and names each below with what comes next', async () => {
    const next = { title: { en: 'Cut spare ribs' }, at: at(20) };
    const rest = held('Rest spare ribs', { isSold: false, next });
    const words = await deskWith({ overlong: [held('Hold spare ribs'), rest] });
    expect(words).toContain(said.overlong(2));
    expect(words).toContain('Then Cut spare ribs, 20:00');
  });

  it('says it in Spanish', async () => {
    const spanish: Say = { ...english, language: 'es' };
    const words = await deskWith({ overlong: [held('Mantener costillas')] }, spanish);
    expect(words).toContain('1 h de más');
    expect(words).toContain('Lo que quede a las 19:00 se tira.');
  });
});

/** A desk that has it on offer, once it was asked for. */
async function deskOffered(better: MendOffer): Promise<MendDay> {
  const doors = { mend: async () => ({ ok: true as const, mend: { id: 'it', offer: better } }) };
  const desk = Object.assign(new MendDay(), { doors, say: english, view: dayAt(7) });
  document.body.append(desk);
  await desk.updateComplete;
  desk.shadowRoot?.querySelector('button')?.click();
  await settled(desk);
  return desk;
}

/** All that it says. */
const wordsOn = (desk: MendDay): string =>
  (desk.shadowRoot?.textContent ?? '').replace(/\s+/g, ' ');

describe('what mends a day, when it is offered', () => {
  it('stands beside how the day goes as it is, service by service', async () => {
    const id = 'dinner' as ServiceId;
    const dinner = { id, name: { en: 'Dinner' }, beforeS: seconds(-1080), afterS: seconds(300) };
    const ribs = { name: { en: 'Spare ribs' }, beforeS: seconds(-1080), afterS: seconds(-240) };
    const overlong = { before: 2, after: 0 };
    const better = { ...offer, services: [dinner], batches: [ribs], overlong };
    const desk = await deskOffered(better);
    const rows = [...(desk.shadowRoot?.querySelectorAll('.services li') ?? [])].map((row) =>
      (row.textContent ?? '').replace(/\s+/g, ' ').trim(),
    );
    expect(rows).toEqual([
      'as it is done so',
      'Dinner18 min late→ 5 min to spare',
      'Spare ribs18 min late→ 4 min late',
      'Rests and holds too long2→ 0',
    ]);
  });

  it('says before it is taken which service it makes later and by how much', async () => {
    const of = (name: string, beforeS: number, afterS: number) => {
      return { id: name as ServiceId, name: { en: name }, beforeS, afterS } as never;
    };
    const services = [of('Dinner', -1080, 300), of('Lunch', -120, -720)];
    const words = wordsOn(await deskOffered({ ...offer, services }));
    expect(words).toContain('But it makes Lunch 10 min later: 12 min late.');
    expect(words).not.toContain('makes Dinner');
  });

  it('does not call it enough where a service stays late', () => {
    const id = 'dinner' as ServiceId;
    const dinner = { id, name: { en: 'Dinner' }, beforeS: seconds(-1080), afterS: seconds(-600) };
    expect(sayMendRung({ ...offer, services: [dinner] }, english)).toBe(said.helps);
    expect(sayMendRung(offer, english)).toBe(said.rungs.order);
    const anew: MendOffer = { ...offer, rung: 'all-anew', services: [dinner] };
    expect(sayMendRung(anew, english)).toBe(`${said.helps} ${said.rungs['all-anew']}`);
  });
});

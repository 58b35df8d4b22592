// @vitest-environment happy-dom
import { afterEach, describe, expect, it } from 'vitest';
import { MendDay } from '../../../client/desk/mend-day.ts';
import type { CommandId } from '../../../shared/kernel/index.ts';
import { instant } from '../../../shared/kernel/index.ts';
import type { MendShown, MendTaken, PlanAnswer } from '../../../shared/protocol/index.ts';
import type { DeskView, MendOffer } from '../../../shared/view/index.ts';
import { mendWords, type Say } from '../../../shared/words/index.ts';

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
  changes: [],
  others: 0,
};

/** The day as the hub tells it: arranged by so manieth event, with the news of a command. */
const dayAt = (arrangedSeq: number, news: CommandId | null = null) =>
  ({
    services: [],
    overlong: 0,
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

import { describe, expect, it } from 'vitest';
import { memoryDisk, openMemoryLog, type WriteStep } from '../../../server/store/index.ts';
import type { CommandId, DayId } from '../../../shared/kernel/index.ts';
import { instant } from '../../../shared/kernel/index.ts';
import type { Answer } from '../../../shared/protocol/index.ts';
import { asNotes, BAD_WORDS } from './note-day.ts';
import { noteCommand, openNotes, START, seenLink, settle, station, trim } from './setting.ts';

const kept = (disk: ReturnType<typeof memoryDisk>) =>
  disk.entries().map(({ bytes }) => JSON.parse(Buffer.from(bytes).toString()));

describe('one tap', () => {
  it('is durable before it is answered', async () => {
    const disk = memoryDisk();
    const steps: (WriteStep | 'answered')[] = [];
    const log = openMemoryLog(disk, (step) => void steps.push(step));
    const { hub, clock } = await openNotes(disk, { log });
    const listener = hub.accept(seenLink());
    void listener.command(noteCommand('salt')).then(() => steps.push('answered'));
    await settle(clock);
    expect(steps).toEqual(['begun', 'written', 'committed', 'synced', 'answered']);
  });

  it('reaches every screen that shows it, with the number of its event', async () => {
    const { hub, clock } = await openNotes(memoryDisk());
    const links = [seenLink(trim, 'a'), seenLink(trim, 'b'), seenLink({ kind: 'smoker' }, 'c')];
    const [first] = links.map((link) => hub.accept(link));
    const answer = first?.command(noteCommand('salt'));
    await settle(clock);
    expect(await answer).toEqual({ ok: true, seq: 1 });
    for (const { views } of links) {
      expect(views.map(({ seq }) => seq)).toEqual([0, 1]);
      expect(asNotes(views.at(-1)?.view as never).notes).toEqual(['salt']);
    }
  });

  it('is worked out once for all screens with one face', async () => {
    const { hub, clock } = await openNotes(memoryDisk());
    const [a, b] = [seenLink(trim, 'a'), seenLink(trim, 'b')];
    hub.accept(a);
    void hub.accept(b).command(noteCommand('salt'));
    await settle(clock);
    expect(a.views[0]).toBe(b.views[0]);
    expect(a.views[1]).toBe(b.views[1]);
  });

  it('says who and on which screen, and that is the one whose link it came over', async () => {
    const disk = memoryDisk();
    const { hub, clock } = await openNotes(disk);
    const listener = hub.accept(seenLink(trim, 'the-wall'));
    const forged = {
      ...noteCommand('salt'),
      screenId: 'another' as never,
      personId: 'ana' as never,
    };
    void listener.command(forged);
    await settle(clock);
    expect(kept(disk)).toMatchObject([{ screenId: 'the-wall', personId: 'ana', text: 'salt' }]);
  });

  it('is refused in words where the screen may not ask for it', async () => {
    const { hub, clock } = await openNotes(memoryDisk());
    const answer = hub.accept(seenLink(station('silent'))).command(noteCommand('salt'));
    await settle(clock);
    expect(await answer).toEqual({ ok: false, refusal: { rule: 'not-this-screens' } });
  });
});

describe('a tap that comes twice', () => {
  it('is kept once and gets the same answer', async () => {
    const disk = memoryDisk();
    const { hub, clock } = await openNotes(disk);
    const listener = hub.accept(seenLink());
    const command = noteCommand('salt');
    const answers: Promise<Answer>[] = [listener.command(command), listener.command(command)];
    await settle(clock);
    void listener.command(noteCommand('pepper'));
    await settle(clock);
    answers.push(listener.command(command));
    await settle(clock);
    expect(await Promise.all(answers)).toEqual(Array(3).fill({ ok: true, seq: 1 }));
    expect(kept(disk)).toHaveLength(2);
  });

  it('is refused again in the same words after the hub was restarted', async () => {
    const disk = memoryDisk();
    const one = await openNotes(disk);
    const again = noteCommand('salt');
    const answers = ['salt', 'salt'].map((text, i) =>
      one.hub.command(i === 1 ? again : noteCommand(text)),
    );
    await settle(one.clock);
    const refused = await answers[1];
    expect(refused).toEqual({ ok: false, refusal: { rule: 'nothing-moves' } });
    const two = await openNotes(disk);
    const same = two.hub.command(again);
    await settle(two.clock);
    expect(await same).toEqual(refused);
  });
});

describe('taps of one turn', () => {
  it('are kept in one write, each decided on what those before it left', async () => {
    const disk = memoryDisk();
    const steps: WriteStep[] = [];
    const log = openMemoryLog(disk, (step) => void steps.push(step));
    const { hub, clock } = await openNotes(disk, { log });
    const texts = ['salt', 'pepper', 'salt'];
    const answers = texts.map((text) => hub.command(noteCommand(text)));
    await settle(clock);
    expect(await Promise.all(answers)).toEqual([
      { ok: true, seq: 1 },
      { ok: true, seq: 2 },
      { ok: false, refusal: { rule: 'nothing-moves' } },
    ]);
    expect(steps.filter((step) => step === 'begun')).toHaveLength(1);
  });

  it('are shown once', async () => {
    const { hub, clock } = await openNotes(memoryDisk());
    const link = seenLink();
    hub.accept(link);
    for (const text of ['salt', 'pepper']) void hub.command(noteCommand(text));
    await settle(clock);
    expect(link.views.map(({ seq }) => seq)).toEqual([0, 2]);
  });
});

describe('a write that fails', () => {
  it('answers nothing, keeps nothing, and the next tap goes through', async () => {
    const disk = memoryDisk();
    const log = openMemoryLog(disk);
    let failures = 2;
    const failing: typeof log = {
      ...log,
      append: async (batch) => {
        if (failures-- > 0) throw new Error('disk full');
        return log.append(batch);
      },
    };
    const { hub, clock, reports } = await openNotes(disk, { log: failing });
    const lost = hub.command(noteCommand('salt'));
    const outcome = expect(lost).rejects.toThrow();
    await settle(clock);
    await outcome;
    expect(reports.map(({ what }) => what)).toContain('an append failed');
    const next = hub.command(noteCommand('salt'));
    await settle(clock);
    expect(await next).toEqual({ ok: true, seq: 1 });
  });

  it('is answered from the log when it was kept all the same', async () => {
    const disk = memoryDisk();
    const log = openMemoryLog(disk);
    let isFirst = true;
    const doubtful: typeof log = {
      ...log,
      append: async (batch) => {
        const appended = await log.append(batch);
        if (isFirst) {
          isFirst = false;
          throw new Error('connection lost');
        }
        return appended;
      },
    };
    const { hub, clock } = await openNotes(disk, { log: doubtful });
    const link = seenLink();
    hub.accept(link);
    const answer = hub.command(noteCommand('salt'));
    await settle(clock);
    expect(await answer).toEqual({ ok: true, seq: 1 });
    expect(kept(disk)).toHaveLength(1);
    expect(asNotes(link.views.at(-1)?.view as never).notes).toEqual(['salt']);
  });
});

describe('a fault of our own', () => {
  it('in a decision is said loudly and answered, and the tap after it is kept', async () => {
    const { hub, clock, reports } = await openNotes(memoryDisk());
    const answers = [BAD_WORDS.decide, 'salt'].map((text) => hub.command(noteCommand(text)));
    await settle(clock);
    expect(await Promise.all(answers)).toEqual([
      { ok: false, refusal: { rule: 'hub-fault' } },
      { ok: true, seq: 1 },
    ]);
    expect(reports).toMatchObject([{ level: 'fault', what: 'a command could not be decided' }]);
  });

  it('in the running day loses no event: the day is made anew from what is kept', async () => {
    const { hub, clock, reports } = await openNotes(memoryDisk());
    const link = seenLink();
    hub.accept(link);
    for (const text of ['salt', BAD_WORDS.apply, 'pepper']) void hub.command(noteCommand(text));
    await settle(clock);
    expect(asNotes(link.views.at(-1)?.view as never).notes).toEqual([
      'salt',
      BAD_WORDS.apply,
      'pepper',
    ]);
    expect(reports).toMatchObject([{ level: 'fault' }]);
  });

  it('in a question is answered in words', async () => {
    const { hub } = await openNotes(memoryDisk());
    const listener = hub.accept(seenLink());
    const question = { kind: 'ifMoved', stay: 's', need: 0, to: 'a/1' } as never;
    expect(listener.question(question)).toEqual({ ok: false, refusal: { rule: 'hub-fault' } });
  });

  it('in one link does not keep the view from the next', async () => {
    const { hub, clock, reports } = await openNotes(memoryDisk());
    const broken = seenLink(trim, 'a');
    hub.accept({
      ...broken,
      view: () => {
        throw new Error('socket gone');
      },
    });
    const whole = seenLink(trim, 'b');
    hub.accept(whole);
    void hub.command(noteCommand('salt'));
    await settle(clock);
    expect(whole.views).toHaveLength(2);
    expect(reports.length).toBeGreaterThan(0);
  });
});

describe('time', () => {
  it('sends a view only to the faces that it changes', async () => {
    const { hub, clock } = await openNotes(memoryDisk());
    const [wall, smoker] = [seenLink(trim), seenLink({ kind: 'smoker' })];
    hub.accept(wall);
    hub.accept(smoker);
    clock.advance(30_000);
    expect(wall.views).toHaveLength(1);
    clock.advance(60_000);
    expect(wall.views).toHaveLength(2);
    expect(smoker.views).toHaveLength(1);
  });

  it('is when the finger came down, if that can be', async () => {
    const disk = memoryDisk();
    const { hub, clock } = await openNotes(disk);
    clock.advance(600_000);
    const now = clock.now();
    const earlier = instant(START + 120_000);
    const later = instant(now + 60_000);
    void hub.command(noteCommand('alone', { tappedAt: earlier }));
    void hub.command(noteCommand('before the last', { tappedAt: START }));
    void hub.command(noteCommand('in the future', { tappedAt: later }));
    await settle(clock);
    expect(kept(disk).map(({ at }) => at)).toEqual([earlier, now, now]);
  });

  it('does not run backwards when the machine’s clock is set back, nor at a restart', async () => {
    const disk = memoryDisk();
    const one = await openNotes(disk);
    one.clock.advance(60_000);
    const last = one.clock.now();
    void one.hub.command(noteCommand('salt', { tappedAt: last }));
    await settle(one.clock);
    one.clock.jump(START);
    void one.hub.command(noteCommand('pepper', { tappedAt: START }));
    await settle(one.clock);
    const two = await openNotes(disk, { at: START });
    void two.hub.command(noteCommand('sugar', { tappedAt: START }));
    await settle(two.clock);
    expect(kept(disk).map(({ at }) => at)).toEqual([last, last, last]);
    expect(two.hub.accept(seenLink()).beat({ t0: 0 })).toMatchObject({ t1: last, t2: last });
  });
});

describe('a screen', () => {
  it('is shown the whole view when it comes, and again when it asks', async () => {
    const { hub } = await openNotes(memoryDisk());
    const link = seenLink();
    const listener = hub.accept(link);
    listener.whole();
    expect(link.views).toHaveLength(2);
  });

  it('whose face there is nothing for is told why', async () => {
    const { hub } = await openNotes(memoryDisk());
    const link = seenLink(station('nowhere'));
    hub.accept(link);
    expect(link.blanks).toMatchObject([{ seq: 0, refusal: { rule: 'unknown-place' } }]);
  });

  it('that is gone is sent nothing more', async () => {
    const { hub, clock } = await openNotes(memoryDisk());
    const link = seenLink();
    hub.accept(link).gone();
    void hub.command(noteCommand('salt'));
    await settle(clock);
    expect(link.views).toHaveLength(1);
    expect(hub.health.screens).toBe(0);
  });

  it('sees another epoch from a hub that was opened anew', async () => {
    const disk = memoryDisk();
    const epochs = [];
    for (const _opening of [1, 2]) {
      const { hub } = await openNotes(disk);
      const link = seenLink();
      hub.accept(link);
      epochs.push(link.views[0]?.epoch);
    }
    expect(new Set(epochs).size).toBe(2);
  });
});

describe('a damaged log', () => {
  async function damaged() {
    const disk = memoryDisk();
    const one = await openNotes(disk);
    for (const text of ['salt', 'pepper', 'sugar']) void one.hub.command(noteCommand(text));
    await settle(one.clock);
    await one.hub.close();
    disk.damage((entries) => entries.splice(1, 1));
    return openNotes(disk);
  }

  it('is served up to the break, and says where and why', async () => {
    const { hub, reports } = await damaged();
    const link = seenLink();
    hub.accept(link);
    expect(link.readOnlys).toEqual([{ atSeq: 1, why: 'missing' }]);
    expect(asNotes(link.views[0]?.view as never).notes).toEqual(['salt']);
    expect(reports).toMatchObject([{ level: 'fault', what: 'the log is damaged', atSeq: 1 }]);
  });

  it('keeps nothing more and says so', async () => {
    const { hub } = await damaged();
    expect(await hub.command(noteCommand('smoke'))).toEqual({
      ok: false,
      refusal: { rule: 'read-only', atSeq: 1 },
    });
  });
});

it('stands down when another hub takes its log, and tells its screens', async () => {
  const disk = memoryDisk();
  const { hub, clock } = await openNotes(disk);
  const link = seenLink();
  hub.accept(link);
  await openNotes(disk);
  const lost = expect(hub.command(noteCommand('salt'))).rejects.toThrow('has the log');
  await settle(clock);
  await lost;
  expect(link.readOnlys).toEqual([{ atSeq: 0, why: 'taken' }]);
  expect(await hub.command(noteCommand('pepper'))).toMatchObject({
    refusal: { rule: 'read-only' },
  });
});

it('keeps what the hub itself brings once, however often it is brought', async () => {
  const disk = memoryDisk();
  const { hub, clock } = await openNotes(disk);
  const fact = { kind: 'noteWritten', text: 'plan', task: null } as const;
  const brought = { id: 'plan-1' as CommandId, at: instant(START - 5_000), facts: [fact] };
  const answers = [hub.bring(brought), hub.bring(brought)];
  await settle(clock);
  expect(await Promise.all(answers)).toEqual(Array(2).fill({ ok: true, seq: 1 }));
  expect(kept(disk)).toMatchObject([
    { at: brought.at, day: '2026-11-25' as DayId, screenId: null, commandId: 'plan-1' },
  ]);
});

it('finishes what is under way before it closes, and closes its links', async () => {
  const disk = memoryDisk();
  const { hub, clock } = await openNotes(disk);
  const link = seenLink();
  const answer = hub.accept(link).command(noteCommand('salt'));
  const closed = hub.close();
  await settle(clock);
  await closed;
  expect(await answer).toEqual({ ok: true, seq: 1 });
  expect(link.isClosed).toBe(true);
});

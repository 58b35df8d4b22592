import { describe, expect, it } from 'vitest';
import { Agenda } from './agenda.ts';
import { Chance } from './chance.ts';
import { Life } from './life.ts';

describe('the agenda', () => {
  it('runs things by their moment, and those of one moment as they were asked for', async () => {
    const agenda = new Agenda();
    const ran: string[] = [];
    const note = (name: string) => () => ran.push(`${name} at ${agenda.nowMs}`);
    agenda.after(20, note('third'));
    agenda.after(10, note('first'));
    agenda.after(10, note('second'));
    await agenda.passTo(100);
    expect(ran).toEqual(['first at 10', 'second at 10', 'third at 20']);
    expect(agenda.nowMs).toBe(100);
  });

  it('keeps that order among thousands', async () => {
    const agenda = new Agenda();
    const chance = Chance.ofSeed(1);
    const ran: number[] = [];
    for (let i = 0; i < 3000; i++) {
      const dueMs = chance.below(500);
      agenda.after(dueMs, () => ran.push(dueMs));
    }
    await agenda.passTo(500);
    expect(ran).toHaveLength(3000);
    expect(ran).toEqual(ran.toSorted((a, b) => a - b));
  });

  it('lets all that waits for promises alone go on before time does', async () => {
    const agenda = new Agenda();
    const ran: string[] = [];
    agenda.after(1, async () => {
      for (let turn = 0; turn < 100; turn++) await Promise.resolve();
      ran.push(`promised at ${agenda.nowMs}`);
    });
    agenda.after(2, () => ran.push('next'));
    await agenda.passTo(10);
    expect(ran).toEqual(['promised at 1', 'next']);
  });

  it('does not run what was called off, nor what lies beyond', async () => {
    const agenda = new Agenda();
    const ran: string[] = [];
    const callOff = agenda.after(5, () => ran.push('called off'));
    agenda.after(50, () => ran.push('beyond'));
    callOff();
    await agenda.passTo(10);
    expect(ran).toEqual([]);
    expect(await agenda.step(100)).toBe(true);
    expect(await agenda.step(100)).toBe(false);
    expect(ran).toEqual(['beyond']);
  });
});

describe('a life that is over', () => {
  it('runs nothing and waits for nothing any more', async () => {
    const life = new Life();
    const ran: string[] = [];
    const run = life.guard(() => ran.push('ran'));
    void life.during(Promise.resolve()).then(() => ran.push('came'));
    void life.during(Promise.reject(new Error('failed'))).catch(() => ran.push('failed'));
    life.onEnd(() => ran.push('mourned'));
    life.end();
    life.end();
    run();
    await new Promise((resolve) => setImmediate(resolve));
    expect(ran).toEqual(['mourned']);
  });
});

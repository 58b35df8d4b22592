import { describe, expect, it } from 'vitest';
import { createOwnersCode } from '../../../server/who/owners-code.ts';
import { createPairing } from '../../../server/who/pairing.ts';
import { createProofs } from '../../../server/who/proofs.ts';
import { createTries } from '../../../server/who/tries.ts';
import { must, type PersonId, type ScreenId } from '../../../shared/kernel/index.ts';

const MINUTE_MS = 60_000;
const screen = 's1' as ScreenId;
const [ines, theo] = ['ines', 'theo'] as [PersonId, PersonId];

function clock() {
  const time = { ms: 0 };
  return { time, nowMs: () => time.ms };
}

describe("the owner's code", () => {
  it('is right as printed, wrong with another letter', () => {
    const code = createOwnersCode(clock().nowMs);
    expect(code.shown).toMatch(/^\w{4}-\w{4}$/);
    expect(code.check(code.shown.toLowerCase())).toBe('right');
    expect(code.check(`${code.shown}C`)).toBe('wrong');
  });

  it('runs out after ten minutes', () => {
    const { time, nowMs } = clock();
    const code = createOwnersCode(nowMs);
    time.ms = 10 * MINUTE_MS - 1;
    expect(code.check(code.shown)).toBe('right');
    time.ms = 10 * MINUTE_MS;
    expect(code.check(code.shown)).toBe('over');
  });

  it('is good once', () => {
    const code = createOwnersCode(clock().nowMs);
    code.use();
    expect(code.check(code.shown)).toBe('over');
  });
});

describe("a screen's code", () => {
  it('stands at the desk until it runs out', () => {
    const { time, nowMs } = clock();
    const pairing = createPairing(nowMs);
    const { code, secret } = must(pairing.ask('192.0.2.7'), 'a code');
    expect(pairing.shown()).toEqual([{ code, address: '192.0.2.7', leftS: 300 }]);
    expect(pairing.outcome(secret)).toEqual({ is: 'waiting' });
    time.ms = 5 * MINUTE_MS;
    expect(pairing.shown()).toEqual([]);
    expect(pairing.has(code)).toBe(false);
    expect(pairing.outcome(secret)).toEqual({ is: 'over' });
  });

  it('lets in the one who has its secret, and nobody who has read the code off the wall', () => {
    const pairing = createPairing(clock().nowMs);
    const { code, secret } = must(pairing.ask('192.0.2.7'), 'a code');
    pairing.letIn(code, screen, 'token');
    expect(pairing.outcome(code)).toEqual({ is: 'over' });
    expect(pairing.outcome(secret)).toEqual({ is: 'let-in', screen, token: 'token' });
  });

  it('is let in once', () => {
    const pairing = createPairing(clock().nowMs);
    const { code, secret } = must(pairing.ask('192.0.2.7'), 'a code');
    pairing.letIn(code, screen, 'token');
    expect(pairing.has(code)).toBe(false);
    pairing.letIn(code, 's2' as ScreenId, 'another');
    expect(pairing.outcome(secret)).toMatchObject({ screen });
  });

  it('is not given to more at once than anybody puts up', () => {
    const pairing = createPairing(clock().nowMs);
    const asked = Array.from({ length: 21 }, () => pairing.ask('192.0.2.7'));
    expect(asked.filter((each) => each === null)).toHaveLength(1);
  });
});

describe('tries', () => {
  it('are free for a slip of the finger, then so many seconds apart', () => {
    const { time, nowMs } = clock();
    const tries = createTries({ burst: 3, everyS: 20 }, nowMs);
    expect([1, 2, 3, 4].map(() => tries.take('a'))).toEqual([null, null, null, 20]);
    time.ms = 20_000;
    expect([1, 2].map(() => tries.take('a'))).toEqual([null, 20]);
  });

  it('that are not let through make nobody wait longer', () => {
    const { time, nowMs } = clock();
    const tries = createTries({ burst: 1, everyS: 20 }, nowMs);
    for (let n = 0; n < 100; n++) tries.take('a');
    time.ms = 20_000;
    expect(tries.take('a')).toBeNull();
  });

  it('are counted for each by themselves', () => {
    const tries = createTries({ burst: 1, everyS: 20 }, clock().nowMs);
    expect([tries.take('a'), tries.take('b'), tries.take('a')]).toEqual([null, null, 20]);
  });
});

describe('a proof of who is there', () => {
  it('holds five minutes, at that screen alone', () => {
    const { time, nowMs } = clock();
    const proofs = createProofs(nowMs);
    expect(proofs.prove(screen, ines)).toBe(300);
    expect(proofs.personAt(screen)).toBe(ines);
    expect(proofs.personAt('s2' as ScreenId)).toBeNull();
    time.ms = 5 * MINUTE_MS;
    expect(proofs.personAt(screen)).toBeNull();
  });

  it('ends when another comes, when they leave, and when their PIN is changed', () => {
    const proofs = createProofs(clock().nowMs);
    proofs.prove(screen, ines);
    proofs.prove(screen, theo);
    expect(proofs.personAt(screen)).toBe(theo);
    proofs.forget(theo);
    expect(proofs.personAt(screen)).toBeNull();
    proofs.prove(screen, ines);
    proofs.leave(screen);
    expect(proofs.personAt(screen)).toBeNull();
  });
});

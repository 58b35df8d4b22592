import { describe, expect, it } from 'vitest';
import { playwrightCount, vitestCount } from './count.ts';

const file = (status: string, tests: number) => ({
  status,
  assertionResults: Array.from({ length: tests }, () => ({})),
});

describe('the closing line of npm test', () => {
  it('counts what passed and what failed', () => {
    const testResults = [file('passed', 5), file('failed', 2)];
    expect(vitestCount({ numPassedTests: 6, numTotalTests: 7, testResults })).toEqual({
      passed: 6,
      failed: 1,
    });
  });

  it('counts a skipped test as failed, so that none is skipped unseen', () => {
    const testResults = [file('passed', 3)];
    expect(vitestCount({ numPassedTests: 2, numTotalTests: 3, testResults }).failed).toBe(1);
  });

  it('counts a file that broke before its first test', () => {
    const testResults = [file('passed', 3), file('failed', 0)];
    expect(vitestCount({ numPassedTests: 3, numTotalTests: 3, testResults })).toEqual({
      passed: 3,
      failed: 1,
    });
  });

  it('counts a browser test that passed only at its second try as failed', () => {
    const stats = { expected: 4, unexpected: 1, flaky: 1, skipped: 1 };
    expect(playwrightCount({ errors: [], stats })).toEqual({ passed: 4, failed: 3 });
    expect(playwrightCount({ errors: ['no browser'], stats }).failed).toBe(4);
  });
});

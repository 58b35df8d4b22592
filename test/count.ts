import { z } from 'zod';

export type Count = { readonly passed: number; readonly failed: number };

const VitestReport = z.object({
  numPassedTests: z.int(),
  numTotalTests: z.int(),
  testResults: z.array(z.object({ status: z.string(), assertionResults: z.array(z.unknown()) })),
});

/**
 * What vitest's JSON report says. Every test that did not pass has failed, a skipped one too, and
 * a file that broke before its first test counts as one.
 */
export function vitestCount(report: unknown): Count {
  const { numPassedTests, numTotalTests, testResults } = VitestReport.parse(report);
  const broken = testResults.filter(
    ({ status, assertionResults }) => status !== 'passed' && assertionResults.length === 0,
  );
  return { passed: numPassedTests, failed: numTotalTests - numPassedTests + broken.length };
}

const PlaywrightReport = z.object({
  errors: z.array(z.unknown()),
  stats: z.object({
    expected: z.int(),
    unexpected: z.int(),
    flaky: z.int(),
    skipped: z.int(),
  }),
});

/** What playwright's JSON report says, by the same measure; passing at a second try is failing. */
export function playwrightCount(report: unknown): Count {
  const { errors, stats } = PlaywrightReport.parse(report);
  const failed = stats.unexpected + stats.flaky + stats.skipped + errors.length;
  return { passed: stats.expected, failed };
}

import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { root } from '../server/fingerprint.mjs';
import { ensureBrowser } from './browser.ts';
import { type Count, playwrightCount, vitestCount } from './count.ts';

/** Longest a step may take before it is ended and counted as failed. */
const STEP_LIMIT_MS = 20 * 60_000;

type Step = {
  readonly name: string;
  readonly command: readonly [string, ...string[]];
  readonly env?: Record<string, string>;
  /** Reads the report the step wrote; without one the step itself is the one thing counted. */
  readonly count?: () => Count;
};

const reports = mkdtempSync(join(tmpdir(), 'coalface-test-'));
const readReport = (name: string): unknown => JSON.parse(readFileSync(join(reports, name), 'utf8'));

const tool = (name: string) => join(root, 'node_modules/.bin', name);

const steps: readonly Step[] = [
  { name: 'types', command: [tool('tsc'), '--noEmit'] },
  { name: 'style and layers', command: [tool('biome'), 'check', '--error-on-warnings'] },
  { name: 'build', command: [process.execPath, 'server/build.mjs'] },
  {
    name: 'tests',
    command: [
      tool('vitest'),
      'run',
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${join(reports, 'vitest.json')}`,
    ],
    count: () => vitestCount(readReport('vitest.json')),
  },
  {
    name: 'browser tests',
    command: [tool('playwright'), 'test', '--reporter=list,json'],
    env: { PLAYWRIGHT_JSON_OUTPUT_NAME: join(reports, 'playwright.json') },
    count: () => playwrightCount(readReport('playwright.json')),
  },
];

function runStep({ name, command: [file, ...args], env, count }: Step): Count {
  console.log(`\n── ${name} ──`);
  const { status } = spawnSync(file, args, {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, ...env },
    timeout: STEP_LIMIT_MS,
    killSignal: 'SIGKILL',
    shell: process.platform === 'win32',
  });
  const done = status === 0;
  if (count === undefined) return { passed: done ? 1 : 0, failed: done ? 0 : 1 };
  try {
    const { passed, failed } = count();
    // A run that ended badly though no test failed broke outside its tests.
    return { passed, failed: done ? failed : Math.max(failed, 1) };
  } catch {
    return { passed: 0, failed: 1 };
  }
}

const total: { passed: number; failed: number } = { passed: 0, failed: 0 };
if (!ensureBrowser()) console.error('No Chromium could be fetched: the browser tests will fail.');
for (const step of steps) {
  const { passed, failed } = runStep(step);
  total.passed += passed;
  total.failed += failed;
}
rmSync(reports, { recursive: true });
console.log(`\n${total.passed} passed, ${total.failed} failed`);
process.exitCode = total.failed === 0 ? 0 : 1;

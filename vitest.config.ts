import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** The simulator lives for minutes: it goes first, so that nothing waits for it at the end. */
class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    const isLong = ({ moduleId }: TestSpecification) => moduleId.includes('/test/sim/');
    return [...sorted.filter(isLong), ...sorted.filter((file) => !isLong(file))];
  }
}

/**
 * These hang something on a document that no test takes off again, put something of their own in a
 * browser's place, or look at all it hears.
 */
const OWN_DOCUMENT = [
  ...['install/install-page', 'shell/chime', 'shell/language', 'shell/wake', 'stand/stand'],
  ...['pair/pair-page', 'standard/standard-sheet', 'start/start-page', 'station/ink'],
  ...['stand/keep-likeness', 'sync/tab-drainer'],
].map((name) => `test/client/${name}.test.ts`);

export default defineConfig({
  test: {
    setupFiles: ['test/fixed-seed.ts'],
    // A test that needs a document says so at its top: `// @vitest-environment happy-dom`.
    environment: 'node',
    testTimeout: 60_000,
    hookTimeout: 60_000,
    // Vitest leaves a core to whoever watches; here nobody does.
    maxWorkers: '100%',
    sequence: { sequencer: LongestFirst },
    projects: [
      {
        extends: true,
        test: {
          name: 'hub',
          globalSetup: 'test/hub-setup.ts',
          include: ['test/**/*.test.ts'],
          exclude: ['test/client/**'],
          // What these read is read once a worker, not once a file: half of a run was reading.
          isolate: false,
        },
      },
      {
        extends: true,
        test: {
          name: 'screens',
          include: ['test/client/**/*.test.ts'],
          exclude: OWN_DOCUMENT,
          // Here too: a document goes from file to file, and parts are defined in it once.
          isolate: false,
        },
      },
      { extends: true, test: { name: 'own document', include: OWN_DOCUMENT } },
    ],
  },
});

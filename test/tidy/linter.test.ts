import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { root } from '../../server/fingerprint.mjs';

/** The rooms from the ground up; those in one row do not know one another. */
const FLOORS = [
  ['kernel'],
  ['catalogue', 'kitchen', 'schedule', 'cook', 'safety'],
  ['plan'],
  ['day'],
  ['record'],
  ['view'],
  ['words', 'protocol'],
  ['paper'],
];
const ROOMS = FLOORS.flat();
const floorOf = (room: string) => FLOORS.findIndex((rooms) => rooms.includes(room));

/** Left out though they would run down: plan/ is given what these know; paper is sent nowhere. */
const LEFT_OUT = ['plan -> cook', 'plan -> safety', 'paper -> protocol'];
const CLIENT_STANDS_ON = ['view', 'words', 'protocol', 'kernel'];

const CLOCKS = ['Date', 'setTimeout', 'performance', 'crypto', 'process', 'fetch', 'globalThis'];

type Planted = { readonly text: string; readonly rule?: string };
const planted = new Map<string, Planted>();

/** Plants one file and says which rule must flag it; none, if it is as it should be. */
const plant = (path: string, text: string, rule?: string) =>
  planted.set(path, rule === undefined ? { text } : { text, rule });

const IMPORT = 'style/noRestrictedImports';

for (const from of ROOMS) {
  for (const to of ROOMS.filter((room) => room !== from)) {
    const isDown = floorOf(to) < floorOf(from) && !LEFT_OUT.includes(`${from} -> ${to}`);
    const path = `shared/${from}/to-${to}.ts`;
    plant(path, `import '../${to}/index.ts';`, isDown ? undefined : IMPORT);
  }
  plant(`shared/${from}/past-the-door.ts`, "import '../kernel/span.ts';", IMPORT);
  plant(`shared/${from}/to-server.ts`, "import '../../server/main.ts';", IMPORT);
  plant(`shared/${from}/to-client.ts`, "import '../../client/wall.ts';", IMPORT);
  plant(`shared/${from}/to-node.ts`, "import 'node:fs';", IMPORT);
  plant(`shared/${from}/to-a-package.ts`, "import 'express';", IMPORT);
  plant(`shared/${from}/to-its-own.ts`, "import './other.ts';");
  for (const clock of CLOCKS) {
    plant(
      `shared/${from}/reads-${clock}.ts`,
      `const x = ${clock};\nx;`,
      'style/noRestrictedGlobals',
    );
  }
}
for (const to of ROOMS) {
  const rule = CLIENT_STANDS_ON.includes(to) ? undefined : IMPORT;
  plant(`client/wall/to-${to}.ts`, `import '../../shared/${to}/index.ts';`, rule);
  plant(`server/hub/to-${to}.ts`, `import '../../shared/${to}/index.ts';`);
}
plant('client/to-server.ts', "import '../server/main.ts';", IMPORT);
plant('client/to-node.ts', "import 'node:fs';", IMPORT);
plant('client/to-lit.ts', "import 'lit';\nimport 'lit/decorators.js';");
plant('server/to-client.ts', "import '../client/wall.ts';", IMPORT);
plant('server/to-lit.ts', "import 'lit';", IMPORT);
plant('shared/kernel/local-time.ts', "import '@date-fns/tz';");
plant('shared/kernel/zone.ts', "import '@date-fns/tz';", IMPORT);

plant('server/any.ts', 'export const x: any = 1;', 'suspicious/noExplicitAny');
plant('server/default.ts', 'export default 1;', 'style/noDefaultExport');
plant('vite.config.ts', 'export default 1;');
plant('server/one.ts', "import './two.ts';", 'suspicious/noImportCycles');
plant('server/two.ts', "import './one.ts';", 'suspicious/noImportCycles');
plant(
  'server/long.ts',
  `export function long() {\n${'  Math.max(1);\n'.repeat(61)}}\n`,
  'complexity/noExcessiveLinesPerFunction',
);
plant(
  'server/floating.ts',
  'async function later() {}\nexport function now() {\n  later();\n}\n',
  'nursery/noFloatingPromises',
);

const Report = z.object({
  diagnostics: z.array(
    z.object({ category: z.string(), location: z.object({ path: z.string() }) }),
  ),
});

const house = mkdtempSync(join(tmpdir(), 'coalface-tidy-'));
const found = new Map<string, string[]>();

beforeAll(() => {
  copyFileSync(join(root, 'biome.jsonc'), join(house, 'biome.jsonc'));
  for (const [path, { text }] of planted) {
    mkdirSync(dirname(join(house, path)), { recursive: true });
    writeFileSync(join(house, path), text);
  }
  const { stdout } = spawnSync(
    join(root, 'node_modules/.bin/biome'),
    ['lint', '--vcs-enabled=false', '--reporter=json', '--max-diagnostics=none'],
    { cwd: house, encoding: 'utf8', maxBuffer: 64 * 1024 * 1024 },
  );
  for (const { category, location } of Report.parse(JSON.parse(stdout)).diagnostics) {
    const rule = category.replace('lint/', '');
    found.set(location.path, [...(found.get(location.path) ?? []), rule]);
  }
});
afterAll(() => rmSync(house, { recursive: true }));

describe('the linter', () => {
  it('flags every arrow that runs up and every other planted fault', () => {
    const faults = [...planted].filter(([, { rule }]) => rule !== undefined);
    const missed = faults.filter(([path, { rule = '' }]) => !found.get(path)?.includes(rule));
    expect(faults.length).toBeGreaterThan(ROOMS.length ** 2);
    expect(missed).toEqual([]);
  });

  it('lets every arrow be that runs down', () => {
    const sound = [...planted].filter(([, { rule }]) => rule === undefined);
    const hindered = sound.filter(([path]) =>
      found.get(path)?.some((rule) => rule.includes('Restricted') || rule.includes('Default')),
    );
    expect(hindered).toEqual([]);
  });
});

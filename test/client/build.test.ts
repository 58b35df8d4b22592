import { spawnSync } from 'node:child_process';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { builtFile, builtScripts, scriptsOf } from '../built.ts';

/** What Node says of a module it only reads; nothing, if it is JavaScript. */
const complaint = (script: Buffer | string) =>
  spawnSync(process.execPath, ['--input-type=module', '--check', '-'], {
    input: script,
    encoding: 'utf8',
  }).stderr;

describe('the built screens', () => {
  const scripts = builtScripts();

  it('are there', () => {
    expect(scripts).not.toEqual([]);
  });

  it.each(scripts)('%s is JavaScript that any browser reads, no decorator left', (script) => {
    expect(complaint(builtFile(script))).toBe('');
  });

  it('would be caught with a raw decorator in them', () => {
    expect(complaint('class Wall { @property() task; }')).toContain('SyntaxError');
  });
});

describe('what the wall of a station loads', () => {
  const english = 'shared/words/english-tongue.ts';
  const spanish = 'shared/words/spanish-tongue.ts';

  it.each([
    ['English', spanish],
    ['Spanish', english],
  ])('is at most 60 KB packed, in %s', (_, other) => {
    const scripts = scriptsOf('station.html', [other]);
    const bytes = scripts.reduce((sum, file) => sum + gzipSync(builtFile(file)).length, 0);
    expect(bytes).toBeLessThanOrEqual(60_000);
  });

  it('holds no sentence of the other language', () => {
    const said = (never: string) =>
      scriptsOf('station.html', [never]).map((file) => builtFile(file).toString());
    expect(said(spanish).join()).not.toContain('Buscando la central');
    expect(said(english).join()).not.toContain('Looking for the hub');
    expect(said(english).join()).toContain('Buscando la central');
  });
});

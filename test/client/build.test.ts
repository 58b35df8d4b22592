import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { builtFile, builtScripts } from '../built.ts';

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

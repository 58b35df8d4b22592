import { describe, expect, it } from 'vitest';
import { moduleRules, wholeRules } from './module-rules.ts';
import { isCode, parseModule, projectFiles } from './source.ts';
import { textRules } from './text-rules.ts';

const files = projectFiles();
const modules = files.filter(({ path }) => isCode(path)).map(parseModule);

describe('in this project', () => {
  it('the code is found at all', () => {
    expect(modules.length).toBeGreaterThan(10);
  });

  it.each(Object.entries(textRules))('%s', (_, rule) => {
    expect(files.flatMap(rule)).toEqual([]);
  });

  it.each(Object.entries(moduleRules))('%s', (_, rule) => {
    expect(modules.flatMap(rule)).toEqual([]);
  });

  it.each(Object.entries(wholeRules))('%s', (_, rule) => {
    expect(rule(modules)).toEqual([]);
  });
});

import { describe, expect, it } from 'vitest';
import { chosenOptions, chosenSteps } from '../../../shared/catalogue/index.ts';
import { must } from '../../../shared/kernel/index.ts';
import { filesWith } from '../plan/three-elms.ts';

const { catalogue } = filesWith();
const ribs = must(catalogue.routes[0], 'ribs');
const shoulder = must(catalogue.routes[1], 'shoulder');

const idsOf = (route: typeof ribs, said: Record<string, string>) =>
  chosenSteps(route, chosenOptions(route, said)).map(({ step }) => step.id);
const waitedFor = (route: typeof ribs, said: Record<string, string>, id: string) =>
  chosenSteps(route, chosenOptions(route, said)).find(({ step }) => step.id === id)?.after;

describe('the choices of a route', () => {
  it('fall on the usual option where the plan says nothing', () => {
    expect(chosenOptions(ribs, { wrap: 'foil' })).toEqual({
      binder: 'mustard',
      set: 'short',
      wrap: 'foil',
    });
  });

  it('switch steps in and out', () => {
    expect(idsOf(ribs, { wrap: 'none' })).toContain('finish-bare');
    expect(idsOf(ribs, { wrap: 'none' })).not.toContain('wrap-paper');
    expect(idsOf(ribs, { wrap: 'foil' })).toContain('wrap-foil');
    expect(idsOf(shoulder, { finish: 'slice' })).toContain('slice');
    expect(idsOf(shoulder, { finish: 'slice' })).not.toContain('shred');
  });

  it('let what followed a step that is out follow what came before it', () => {
    expect(waitedFor(ribs, { wrap: 'none' }, 'finish-bare')).toEqual(['colour']);
    expect(waitedFor(ribs, { wrap: 'paper' }, 'finish-wrapped')).toEqual(['wrap-paper']);
    expect(waitedFor(shoulder, { moisture: 'neither' }, 'bind-mustard')).toEqual(['sort']);
    expect(waitedFor(shoulder, { moisture: 'brine' }, 'bind-mustard')).toEqual(['drain']);
  });

  it('keep a branch beside the chain: the rub is weighed out before it goes on', () => {
    expect(waitedFor(ribs, {}, 'weigh-rub')).toEqual([]);
    expect(waitedFor(ribs, { binder: 'vinegar' }, 'rub')).toEqual(['bind-vinegar', 'weigh-rub']);
  });

  it('each give their reason, in every language of the demo', () => {
    for (const { choices } of catalogue.routes) {
      for (const { reason } of choices.flatMap(({ options }) => options)) {
        expect(reason.en.length).toBeGreaterThan(10);
        expect(reason.es?.length).toBeGreaterThan(10);
      }
    }
  });
});

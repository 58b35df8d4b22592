import { describe, expect, it } from 'vitest';
import { catalogue as written } from '../../../server/demo/index.ts';
import { drawnParts, readCatalogue } from '../../../shared/catalogue/index.ts';
import { must } from '../../../shared/kernel/index.ts';
import { SHEET, standardsOf } from '../../../shared/view/index.ts';
import { drawings } from '../../../shared/view/standard/drawings/index.ts';
import { filesWith, plain, spoilt } from '../plan/three-elms.ts';

const { catalogue, kitchen } = filesWith();
const shown = standardsOf(catalogue, kitchen);
const of = (cut: string) =>
  must(
    shown.cuts.find((each) => each.cut === cut),
    cut,
  );

describe('the standards of a kitchen', () => {
  it('say of every cut that is trimmed what comes off, what stays, and when it is right', () => {
    const trimmed = ['spare-ribs', 'shoulder', 'brisket', 'short-ribs', 'chicken-half'];
    for (const cut of [...trimmed, 'brisket-parted']) {
      const { off, stays, right, caution, drawing } = of(cut);
      expect(off.length, cut).toBeGreaterThan(2);
      expect(stays.length, cut).toBeGreaterThan(0);
      expect([right, caution, drawing], cut).not.toContain(null);
      for (const { name, why } of [...off, ...stays]) {
        expect([name.es, why.es], `${cut}: ${name.en}`).not.toContain(undefined);
      }
    }
  });

  it('take off what item 416 must lose to be item 416A', () => {
    // IMPS, Fresh Pork Series 400 (USDA AMS, November 2014), items 416 and 416A, from memory: the
    // sternum and the ventral part of the costal cartilages come off, with the flank meat.
    const parts = of('spare-ribs').off.map(({ part }) => part);
    expect(parts).toEqual(expect.arrayContaining(['breastbone', 'strip', 'flap']));
  });

  it('number the parts in words and drawing alike', () => {
    const { off, stays } = of('spare-ribs');
    expect([...off, ...stays].map(({ figure }) => figure)).toEqual([1, 2, 3, 4, 5, 6]);
  });

  it('have the moves of the table where the cut is trimmed, those of its own way alone', () => {
    const moves = (cut: string) => of(cut).ways.flatMap((way) => way.moves.map(({ step }) => step));
    expect(moves('spare-ribs')).toEqual(['pull', 'square', 'membrane', 'rub']);
    expect(moves('brisket')).not.toContain('part');
    expect(moves('brisket-parted')).toContain('part');
  });

  it('name parts that are drawn, and are refused where they name others', () => {
    const index = plain.catalogue.cuts.findIndex(({ id }) => id === 'spare-ribs');
    const path = `cuts[${index}].standard.off[0].part`;
    const read = readCatalogue(spoilt(written, { [path]: 'feathers' }));
    expect(read).toMatchObject({ ok: false, problems: [{ found: '"feathers"' }] });
    expect(JSON.stringify(read)).toContain(drawnParts['rib slab'].join(', '));
  });
});

describe('the drawings', () => {
  it('draw every part that can be named, on the sheet', () => {
    for (const [name, { parts }] of Object.entries(drawings)) {
      expect(Object.keys(parts).sort(), name).toEqual(
        [...drawnParts[name as keyof typeof drawnParts]].sort(),
      );
      for (const { at, figureAt } of Object.values(parts)) {
        for (const { x, y } of [at, figureAt]) {
          expect(x > 0 && x < SHEET.width && y > 0 && y < SHEET.height, name).toBe(true);
        }
      }
    }
  });

  it('keep their figures apart, so that each can be read', () => {
    for (const [name, { parts }] of Object.entries(drawings)) {
      const all = Object.values(parts).map(({ figureAt }) => figureAt);
      all.forEach((a, i) => {
        for (const b of all.slice(i + 1)) {
          expect(Math.hypot(a.x - b.x, a.y - b.y), name).toBeGreaterThan(24);
        }
      });
    }
  });
});

import { describe, expect, it } from 'vitest';
import { must } from '../../shared/kernel/index.ts';
import { filesWith } from '../shared/plan/three-elms.ts';

/**
 * USDA AMS Institutional Meat Purchase Specifications, fresh pork, series 400: definitions as
 * repeated on purveyors', universities' and an inspection agency's pages; the weight ranges of the
 * items were not found.
 */
const definitions = {
  '406A': 'Boston butt, boneless: bones, cartilage and skin removed',
  '416': 'Spareribs: at least 11 ribs; may include portions of sternum and diaphragm',
  '416A': 'Spareribs, St. Louis style: 416 without sternum, ventral costal cartilage and flank',
  '416B': 'Brisket bones: the sternum, cartilage and lean cut off 416 to make 416A',
} as const;

const { cuts, routes } = filesWith().catalogue;
const cut = (id: string) =>
  must(
    cuts.find((each) => each.id === id),
    id,
  );
const words = (id: string) => {
  const route = must(
    routes.find((each) => each.cut === id),
    id,
  );
  return route.steps.map(({ title, mind }) => `${title.en}. ${mind?.en ?? ''}`).join('\n');
};

describe('the cuts are bought and trimmed as the specifications define them', () => {
  it(`416: ${definitions['416']}`, () => {
    expect(cut('spare-ribs').imps).toBe('416');
  });

  it(`416A: ${definitions['416A']}`, () => {
    expect(cut('spare-ribs').trimmedTo).toBe('416A');
    // Sternum is the breastbone; the flank's flap on a slab is the skirt flap.
    expect(words('spare-ribs')).toMatch(
      /cartilage line: breastbone, strip and skirt flap come off/,
    );
  });

  it(`416B: ${definitions['416B']}`, () => {
    const tips = cut('spare-ribs').tubs.find(({ imps }) => imps === '416B');
    expect(tips?.name.en).toBe('Rib-tip strips');
    expect(tips?.goes).toBe('cooked');
  });

  it(`406A: ${definitions['406A']}`, () => {
    expect(cut('shoulder').imps).toBe('406A');
    // What boning should have left out is searched for all the same.
    expect(words('shoulder')).toMatch(/Search shoulders for bone/);
  });
});

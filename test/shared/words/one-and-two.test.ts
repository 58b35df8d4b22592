import { expect, it } from 'vitest';
import { planDeskWords } from '../../../shared/words/plan-desk.ts';
import { planEditorWords } from '../../../shared/words/plan-editor-words.ts';
import { planEnglish } from '../../../shared/words/plan-english.ts';
import { planSpanish } from '../../../shared/words/plan-spanish.ts';

const [en, es] = [planEnglish, planSpanish];
const [desk, escritorio] = [planDeskWords.en, planDeskWords.es];

it.each([
  [en.salesAfterClosing('Ribs', 1, 0), 'for 1 quarter of an hour,'],
  [en.salesAfterClosing('Ribs', 2, 1), 'for 2 quarters of an hour,'],
  [es.salesAfterClosing('Costillas', 1, 0), 'para 1 cuarto de hora'],
  [en.noRoomToKeep.pans('Ribs', 'Hold', 2, 1), 'needs 2 pan places in the cabinets; there is 1.'],
  [en.noRoomToKeep.pans('Ribs', 'Hold', 1, 0), 'needs 1 pan place in the cabinets; there are 0.'],
  [en.noRoomToKeep.whole('Ribs', 'Hold', 1, 0), 'needs 1 place for whole pieces'],
  [es.noRoomToKeep.whole('Costillas', 'Guardar', 1, 0), 'pide 1 lugar para piezas enteras'],
  [es.noRoomToKeep.pans('Costillas', 'Guardar', 2, 1), 'pide 2 lugares de charola'],
  [en.batchTooLarge('Ribs', 3, 2, 1, 1), 'batch 3 is 2 pieces, and 1 can be made'],
  [en.batchTooLarge('Ribs', 3, 2, 1, 1), 'make it 1 portion or less'],
  [es.batchTooLarge('Costillas', 3, 2, 1, 1), 'de una vez cabe 1: hágala de 1 porción o menos'],
  [en.batchBegun('Ribs 1', 1), 'has begun, 1 piece of it'],
  [es.batchBegun('Costillas 1', 1), 'ya empezó, 1 pieza:'],
  [en.notDelivered('Ribs', 1, 0), 'this takes 1 piece and 0 came'],
  [es.notDelivered('Costillas', 1, 0), 'hace falta 1 pieza y llegaron 0:'],
  [es.notDelivered('Costillas', 2, 1), 'hacen falta 2 piezas y llegó 1:'],
  [en.trimShort('Chili', 'brisket', '2 lb', '1 lb', 1), 'enough for 1 portion.'],
  [es.trimShort('Chili', 'pecho', '2 lb', '1 lb', 2), 'para 2 porciones.'],
  [es.noSkill('Costillas', 'Cuadrar', 'cuchillo', 2, 1), 'hay 1: falta 1.'],
  [es.noSkill('Costillas', 'Cuadrar', 'cuchillo', 3, 1), 'hay 1: faltan 2.'],
  [desk.batch('Ribs 1', null, 1), 'added, 1 portion'],
  [desk.batch('Ribs 1', 2, 1), '2 → 1 portion'],
  [desk.batch('Ribs 1', 1, 2), '1 → 2 portions'],
  [escritorio.batch('Costillas 1', 2, 1), '2 → 1 porción'],
  [desk.kept('Ribs', 1, '1 lb', 'Mon'), '1 portion (1 lb) was kept'],
  [desk.kept('Ribs', 2, '2 lb', 'Mon'), '2 portions (2 lb) were kept'],
  [escritorio.kept('Costillas', 1, '1 lb', 'lun'), 'se apartó 1 porción (1 lb)'],
  [escritorio.until(1, 'lun'), 'úsela o tírela'],
  [escritorio.until(2, 'lun'), 'úselas o tírelas'],
  [desk.portions('Dinner', 'Ribs', 1), 'Dinner, Ribs: 1 portion'],
  [planEditorWords.en.moreLines(1), '1 more that is in the way'],
  [planEditorWords.es.moreLines(1), '1 más que lo impide'],
])('%s', (said, wanted) => {
  expect(`${said}$`).toContain(wanted);
  expect(`${said}$`).not.toContain(`${wanted}s`);
});

// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { DeskRecord } from '../../../client/desk/record-desk.ts';
import type { RecordDoors } from '../../../client/desk/record-doors.ts';
import type { BatchId, CutId, DayId, LotId, ServiceId } from '../../../shared/kernel/index.ts';
import { kilograms } from '../../../shared/kernel/index.ts';
import type { LotTraced, RecordShown, SheetAsk } from '../../../shared/protocol/index.ts';
import type { CheckView, DeskView } from '../../../shared/view/index.ts';
import type { Say } from '../../../shared/words/index.ts';
import { drawn, saidOn, tap, tapsWrittenDown } from '../fingers.ts';
import { at, stationView } from '../fixtures.ts';

const { zone, clock } = stationView;
const say: Say = { language: 'en', zone, clock, temperature: '°C', weight: 'kg' };
const [one, two] = ['2026-11-28-1', '2026-11-28-2'] as [LotId, LotId];
const ribs = { en: 'Spare ribs' };
const day = '2026-11-28' as DayId;
const batch = 'noon-ribs-1' as BatchId;
const kg = kilograms;

const shown: RecordShown = {
  days: [{ day, closed: null, head: null }],
  key: 'aaaa bbbb',
  chain: 'whole',
  lots: [one, two].map((id) => ({
    ...{ id, cut: 'spare-ribs' as CutId, name: ribs, pieces: 8, leftPieces: 3 },
    ...{ isSentBack: false, weightKg: kg(16), supplier: 'Elm Meats', useBy: null },
  })),
  pulls: [
    {
      ...{ batch, name: { en: 'Ribs · Noon' }, cut: 'spare-ribs' as CutId, isBegun: true },
      lots: [{ lot: one, pieces: 5 }],
    },
  ],
  trim: [
    {
      ...{ batch, name: { en: 'Ribs · Noon' }, tub: 'skirt', tubName: { en: 'Skirt meat' } },
      ...{ weightKg: kg(1.2), isWeighed: false },
    },
  ],
  cuts: [
    { cut: 'spare-ribs' as CutId, name: ribs, listed: 8, usualKg: kg(2) },
    { cut: 'belly' as CutId, name: { en: 'Belly' }, listed: null, usualKg: kg(5) },
  ],
};

const traced: LotTraced = {
  trace: {
    lot: {
      ...{ id: one, cut: 'spare-ribs' as CutId, name: ribs, pieces: 8, weightKg: kg(16) },
      ...{ supplier: 'Elm Meats', tempC: null, useBy: null, code: 'E-7', at: at(0), by: null },
    },
    batches: [{ day, batch, name: { en: 'Ribs · Noon' }, weightKg: kg(10) }],
    services: [
      {
        ...{ day, service: 'noon' as ServiceId, name: { en: 'Noon' }, dish: 'ribs' as never },
        ...{ dishName: { en: 'Ribs' }, weightKg: kg(6) },
      },
    ],
    tubs: [],
    thrown: [],
    kept: [],
    lossKg: kg(4),
    leftKg: kg(6),
    sentBackKg: kg(0),
  },
  back: [
    {
      day,
      batch,
      lots: [
        { lot: one, weightKg: kg(10) },
        { lot: two, weightKg: kg(2) },
      ],
    },
  ],
  fed: [{ day, service: 'noon' as ServiceId, lots: [{ lot: one, weightKg: kg(6) }] }],
};

const doors: RecordDoors = {
  show: async () => ({ ok: true, ...shown }),
  trace: async (lot) =>
    lot === one ? { ok: true, ...traced } : { ok: false, refusal: { rule: 'not-on-record' } },
  day: async () => ({ ok: true, evidence: { checks: [], amended: [] } }),
  sheet: async (asked) => {
    sheets.push(asked);
    return { ok: true, name: 'a', type: 'text/csv', text: '' };
  },
};
const sheets: SheetAsk[] = [];

async function desk(
  language: Say['language'] = 'en',
  lot: string | null = null,
  checks: readonly CheckView[] = [],
) {
  const { sync, taps } = tapsWrittenDown();
  const view = { log: [], day, closed: null, checks };
  const element = Object.assign(new DeskRecord(), {
    ...{ sync, doors, lot, view: view as unknown as DeskView, say: { ...say, language } },
  });
  document.body.append(element);
  await drawn();
  return { element, taps };
}

/** Types into the fields of a form inside a part, and sends it. */
async function send(element: Element, part: string, typed: Readonly<Record<string, string>>) {
  const inside = element.shadowRoot?.querySelector(part)?.shadowRoot;
  const form = inside?.querySelector('form');
  for (const [name, value] of Object.entries(typed)) {
    const field = form?.querySelector(`[name="${name}"], [data-name="${name}"]`);
    const input = field?.shadowRoot?.querySelector('input') ?? field;
    Object.assign(input ?? {}, { value });
    input?.dispatchEvent(new Event('change'));
  }
  form?.dispatchEvent(new Event('submit', { bubbles: true, cancelable: true }));
  await drawn();
}

beforeEach(() => vi.useFakeTimers());
afterEach(() => {
  vi.useRealTimers();
  document.body.replaceChildren();
});

describe('a lot that comes', () => {
  it('is asked for with what was written of it, and nothing where nothing was', async () => {
    const { element, taps } = await desk();
    const typed = { cut: 'spare-ribs', pieces: '8', weight: '16.5', supplier: ' Elm Meats ' };
    await send(element, 'record-receive', typed);
    await tap(element, 'it is so');
    expect(taps).toEqual([
      expect.objectContaining({
        ...{ kind: 'receive', cut: 'spare-ribs', pieces: 8, weightKg: 16.5 },
        ...{ supplier: 'Elm Meats', tempC: null, useBy: null, code: null },
      }),
    ]);
  });
});

describe('a lot that came as it seldom comes', () => {
  const usual = {
    ...{ cut: 'spare-ribs', pieces: '8', weight: '16.5', supplier: 'Elm Meats' },
    ...{ temp: '3', useBy: '2026-12-05' },
  };

  it.each([
    ['weight', '1650', '1650 kg for 8 pieces is 206 kg apiece, where 2 kg is usual.'],
    ['weight', '5', '5 kg for 8 pieces is 0.6 kg apiece, where 2 kg is usual.'],
    ['temp', '', 'Nobody measured its temperature.'],
    ['useBy', '', 'No use-by day is on it.'],
    ['useBy', '2062-12-05', 'Its use-by, Tue, Dec 5 2062, is more than a year off.'],
  ])('is asked about with %s “%s”, and taken once somebody says so', async (field, typed, why) => {
    const { element, taps } = await desk();
    await send(element, 'record-receive', { ...usual, [field]: typed });
    expect(saidOn(element)).toContain(why);
    // Sent again by a slip it is asked again.
    await send(element, 'record-receive', { ...usual, [field]: typed });
    expect(taps).toEqual([]);
    await tap(element, 'it is so');
    expect(taps).toEqual([expect.objectContaining({ kind: 'receive', isSo: true })]);
    expect(saidOn(element)).not.toContain(why);
  });

  it('is taken at once where nothing is odd', async () => {
    const { element, taps } = await desk();
    await send(element, 'record-receive', usual);
    expect(taps).toHaveLength(1);
    expect(taps[0]).not.toHaveProperty('isSo');
  });

  it('says all that is odd in one sentence, and is put right where it is', async () => {
    const { element, taps } = await desk('es');
    const odd = { ...usual, weight: '1650', temp: '', useBy: '' };
    await send(element, 'record-receive', odd);
    expect(saidOn(element)).toContain(
      '1650 kg para 8 piezas son 206 kg por pieza, y lo normal son 2 kg; ' +
        'nadie midió su temperatura; no trae fecha de caducidad.',
    );
    await send(element, 'record-receive', usual);
    expect(taps).toHaveLength(1);
  });
});

describe('a lot that comes frozen', () => {
  it.each(['-18.5', '−18,5'])('is kept as it was read, typed as %s', async (temp) => {
    const { element, taps } = await desk();
    const lot = { cut: 'spare-ribs', pieces: '8', weight: '16.5', supplier: 'Elm Meats' };
    await send(element, 'record-receive', { ...lot, temp, useBy: '2026-12-05' });
    expect(taps).toEqual([expect.objectContaining({ kind: 'receive', tempC: -18.5 })]);
  });
});

describe('what is shown of the record', () => {
  it('is what was asked for last, also where an older answer comes after it', async () => {
    const answers: ((answer: Awaited<ReturnType<RecordDoors['show']>>) => void)[] = [];
    const show = () => new Promise<never>((answer) => answers.push(answer as never));
    const { element } = await desk();
    Object.assign(element, { doors: { ...doors, show } });
    for (const seq of [7, 8]) {
      Object.assign(element, { view: { log: [{ seq }], day, closed: null, checks: [] } });
      await drawn();
    }
    const [older, newer] = answers;
    newer?.({ ok: true, ...shown });
    older?.({ ok: true, ...shown, lots: [] });
    await drawn();
    expect(saidOn(element)).toContain(two);
  });
});

describe('a lot of which something cannot be', () => {
  const whole = { cut: 'spare-ribs', pieces: '8', weight: '16.5', supplier: 'Elm Meats' };
  const sound = { ...whole, temp: '3', useBy: '2026-12-05' };

  it.each([
    ['pieces', '', 'Pieces: count them; a whole number from 1 to 10,000.'],
    ['pieces', '2.5', 'Pieces: count them; a whole number from 1 to 10,000.'],
    ['weight', 'heavy', 'Weight: weigh it; more than 0, and at most 20000 kg.'],
    ['weight', '0', 'Weight: weigh it; more than 0, and at most 20000 kg.'],
    ['supplier', '  ', 'Supplier: write whose it is.'],
    ['temp', '400', 'Warmest piece: read it again; a probe in food shows -30 °C to 105 °C.'],
    ['useBy', '2020-01-01', 'Use by: read the label again; '],
  ])('is not sent with %s “%s”, says why, and keeps what was typed', async (field, typed, why) => {
    const { element, taps } = await desk();
    await send(element, 'record-receive', { ...sound, [field]: typed });
    expect(taps).toEqual([]);
    expect(saidOn(element)).toContain(why);
    const inside = element.shadowRoot?.querySelector('record-receive')?.shadowRoot;
    const pieces = inside?.querySelector<HTMLInputElement>('[name="pieces"]')?.value;
    expect(pieces).toBe(field === 'pieces' ? typed : '8');
    await send(element, 'record-receive', { ...sound, [field]: '', ...repaired(field) });
    expect(taps).toHaveLength(1);
    expect(saidOn(element)).not.toContain(why);
  });

  const repaired = (field: string) =>
    field in sound ? { [field]: sound[field as keyof typeof sound] } : {};
});

describe('a cut that is not on the pull list', () => {
  it('can come too, under those that are', async () => {
    const { element, taps } = await desk();
    const inside = element.shadowRoot?.querySelector('record-receive')?.shadowRoot;
    const groups = [...(inside?.querySelectorAll('optgroup') ?? [])].map(({ label, children }) => [
      label,
      [...children].map((option) => option.textContent),
    ]);
    expect(groups).toEqual([
      ['on the pull list', ['Spare ribs']],
      ['not for today', ['Belly']],
    ]);
    const typed = {
      cut: 'belly',
      pieces: '2',
      weight: '9',
      supplier: 'Elm Meats',
      temp: '3.5',
    };
    await send(element, 'record-receive', { ...typed, useBy: '2026-12-05' });
    expect(taps).toEqual([
      expect.objectContaining({ kind: 'receive', cut: 'belly', tempC: 3.5, useBy: '2026-12-05' }),
    ]);
  });
});

describe('the use-by of a lot', () => {
  const field = (element: Element) =>
    element.shadowRoot
      ?.querySelector('record-receive')
      ?.shadowRoot?.querySelector('day-field')
      ?.shadowRoot?.querySelector('label')?.textContent;

  it.each([
    ['en', 'no date', 'Sat, Dec 5'],
    ['es', 'sin fecha', 'sáb, 5 dic'],
  ] as const)('is said with its month in words, in “%s”', async (language, none, said) => {
    const { element } = await desk(language);
    expect(field(element)).toContain(none);
    await send(element, 'record-receive', { pieces: '', useBy: '2026-12-05' });
    expect(field(element)).toContain(said);
  });

  it('sends what was typed with Enter, like every other field', async () => {
    const { element, taps } = await desk();
    const typed = { cut: 'belly', pieces: '2', weight: '9', supplier: 'Elm Meats', temp: '3' };
    const inside = element.shadowRoot?.querySelector('record-receive')?.shadowRoot;
    for (const [name, value] of Object.entries(typed)) {
      Object.assign(inside?.querySelector(`[name="${name}"]`) ?? {}, { value });
    }
    const day = inside?.querySelector('day-field')?.shadowRoot?.querySelector('input');
    Object.assign(day ?? {}, { value: '2026-12-05' });
    day?.dispatchEvent(new KeyboardEvent('keydown', { key: 'Tab' }));
    expect(taps).toEqual([]);
    day?.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter' }));
    await drawn();
    expect(taps).toMatchObject([{ kind: 'receive', cut: 'belly', useBy: '2026-12-05' }]);
  });

  it('is empty again for the next lot', async () => {
    const { element } = await desk();
    const typed = { cut: 'belly', pieces: '2', weight: '9', supplier: 'Elm Meats', temp: '3' };
    await send(element, 'record-receive', { ...typed, useBy: '2026-12-05' });
    expect(field(element)).toContain('no date');
  });
});

describe('a label', () => {
  it('is asked for of one lot, found under the day on which it came', async () => {
    const { element } = await desk();
    sheets.length = 0;
    await tap(element, `label: ${two}, Spare ribs`);
    await tap(element, `label: ${batch}, Ribs · Noon`);
    const asked = {
      as: 'labels',
      language: 'en',
      at: expect.any(String),
      from: day,
      to: day,
    };
    expect(sheets).toEqual([
      { ...asked, only: two },
      { ...asked, only: batch },
    ]);
  });

  it('leads to where its lot went, traced at once', async () => {
    const { element } = await desk('en', one);
    expect(saidOn(element)).toContain('Noon, Ribs');
  });
});

describe('a tub of trim', () => {
  it('is put over the scale, and what that shows is asked for', async () => {
    const { element, taps } = await desk();
    expect(saidOn(element)).toMatch(/Skirt meat · Ribs · Noon\s+1\.2 kg\s+reckoned/);
    await send(element, 'record-trim', { weight: '1.45' });
    expect(taps).toEqual([
      expect.objectContaining({ kind: 'weighTub', batch, tub: 'skirt', weightKg: 1.45 }),
    ]);
  });
});

describe('a batch', () => {
  it('is cut from another lot where a person says so', async () => {
    const { element, taps } = await desk();
    expect(saidOn(element)).toContain(`${one} (5)`);
    await tap(element, 'another lot');
    await tap(element, two);
    expect(taps).toEqual([expect.objectContaining({ kind: 'cutFrom', batch, lots: [two] })]);
  });
});

describe('a lot', () => {
  it('is told both ways on one page', async () => {
    const { element } = await desk();
    await send(element, 'record-trace', { lot: one });
    const said = saidOn(element);
    expect(said).toContain('Noon, Ribs');
    expect(said).toContain(`made of ${one} 10 kg, ${two} 2 kg`);
    expect(said).toMatch(/all that came: Elm Meats E-7\s+16 kg/);
  });

  it('that no day knows is said in a sentence', async () => {
    const { element } = await desk('es');
    await send(element, 'record-trace', { lot: two });
    expect(saidOn(element)).toContain('Eso no está en ningún día');
  });

  it('is found against the clock in a drill, which is written down', async () => {
    const { element, taps } = await desk();
    await tap(element, 'start a recall drill');
    await send(element, 'record-trace', { lot: one });
    await tap(element, 'all of it is found');
    expect(taps).toEqual([
      expect.objectContaining({ kind: 'note', text: `Recall drill: lot ${one} found in 0:00` }),
    ]);
  });
});

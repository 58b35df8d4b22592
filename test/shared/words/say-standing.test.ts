import { describe, expect, it } from 'vitest';
import type { Instant, ServiceId } from '../../../shared/kernel/index.ts';
import { after, hours, instant, minutes, seconds } from '../../../shared/kernel/index.ts';
import type { ServiceStanding } from '../../../shared/view/index.ts';
import { type Say, sayStanding } from '../../../shared/words/index.ts';

const en: Say = { language: 'en', zone: 'UTC', clock: '12 h', temperature: '°F', weight: 'lb' };
const es: Say = { ...en, language: 'es' };

const opensAt = instant(Date.UTC(2026, 10, 28, 14, 45));
const before = after(opensAt, hours(-4));
const mark = { low: 0, likely: 0.5, high: 1, due: 0.9 };

const dinner: ServiceStanding = {
  id: 'dinner' as ServiceId,
  name: { en: 'Dinner', es: 'Cena' },
  opensAt,
  closesAt: after(opensAt, hours(3)),
  inHandS: minutes(18),
  heldBy: null,
  spread: { lowS: minutes(-138), likelyS: minutes(-64), highS: minutes(11), mark },
};

const said = (standing: Partial<ServiceStanding>, now: Instant = before, say = en) =>
  sayStanding({ ...dinner, ...standing }, now, say);

describe('how a service stands, in words', () => {
  it('says first what is likely, then between what it lies, then what the plan alone has', () => {
    expect(said({})).toEqual({
      service: 'Dinner 2:45 pm',
      stands: 'likely 1 h 4 min late',
      between: '2 h 18 min late to 11 min to spare',
      planned: 'if no cook runs long: 18 min to spare',
      isLate: true,
    });
    expect(said({}, before, es)).toMatchObject({
      service: 'Cena 2:45 pm',
      stands: 'probable: 1 h 4 min tarde',
      between: 'de 2 h 18 min tarde a 11 min de margen',
    });
  });

  it('says no range where no cook is in doubt, and calls nothing likely', () => {
    const sure = { spread: null };
    expect(said(sure)).toMatchObject({ stands: '18 min to spare', between: null, planned: null });
    expect(said({ ...sure, inHandS: minutes(-5) })).toMatchObject({
      stands: '5 min late',
      isLate: true,
    });
    // Less than a minute is none, to either side.
    for (const s of [20, -20, -59]) {
      const stood = said({ ...sure, inHandS: seconds(s) });
      expect(stood).toMatchObject({ stands: 'nothing to spare', isLate: false });
    }
    expect(said({ ...sure, inHandS: seconds(-60) })?.stands).toBe('1 min late');
  });

  it('says of a service that is open till when it is, and how the rest of it stands', () => {
    const open = after(opensAt, minutes(45));
    expect(said({ spread: null, inHandS: minutes(11) }, open)).toMatchObject({
      service: 'Dinner, open till 5:45 pm',
      stands: 'still to come: 11 min to spare',
    });
    expect(said({}, open)?.stands).toBe('still to come: likely 1 h 4 min late');
  });

  it('says that all is ready, and nothing more once it has closed', () => {
    const ready = { inHandS: null, spread: null };
    expect(said(ready)).toMatchObject({ stands: 'all ready', isLate: false });
    expect(said(ready, after(opensAt, hours(1)))?.service).toBe('Dinner, open till 5:45 pm');
    expect(said(ready, after(opensAt, hours(3)))).toBeNull();
  });

  it('says that a cook may never be done', () => {
    const some = { lowS: null, likelyS: minutes(-40), highS: seconds(20), mark };
    expect(said({ spread: some })).toMatchObject({
      stands: 'likely 40 min late',
      between: 'at best nothing to spare, and it may never be ready',
    });
    expect(said({ spread: some }, before, es)?.between).toMatch(/^en el mejor caso sin margen/);
    expect(said({ spread: { ...some, likelyS: null, highS: null } }, before, es)).toMatchObject({
      stands: 'probable: nunca listo',
      between: null,
      isLate: true,
    });
  });
});

import { expect, it } from 'vitest';
import { replayJson } from '../../../server/cli/replay-json.ts';
import { replayText } from '../../../server/cli/replay-text.ts';
import { openLive } from '../../../shared/day/index.ts';
import { after, minutes, type ScreenId } from '../../../shared/kernel/index.ts';
import { noon, plan, Telling } from '../../shared/day/demo.ts';

it('names the screens that the log knows, those that were taken off too', () => {
  const day = new Telling();
  const [desk, fire] = ['s1', 's2'] as [ScreenId, ScreenId];
  const place = { role: 'pit', stations: [] } as const;
  const office = { role: 'desk', stations: [] } as const;
  day.keep({ kind: 'screenPaired', screen: desk, name: 'Office', place: office }, noon, null);
  day.keep({ kind: 'screenPaired', screen: fire, name: 'Fire', place }, noon, null);
  const off = after(noon, minutes(5));
  day.keep({ kind: 'screenRevoked', screen: fire }, off, null);
  const live = openLive(day.state, off);
  const { units } = plan.kitchen;
  const say = { language: 'en', zone: plan.built.zone, ...units } as const;
  const text = replayText(live, say, []);
  expect(text).toMatch(/\nScreens\n\s+Office\s+desk\s*\n\s+Fire\s+pit\s+taken off 12:05( pm)?\n/);
  expect(replayJson(live).screens).toMatchObject([
    { id: desk, name: 'Office', role: 'desk', isIn: true },
    { id: fire, name: 'Fire', role: 'pit', isIn: false },
  ]);
});

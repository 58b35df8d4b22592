import type { Say } from './say.ts';

type Clock = Pick<Say, 'clock'>;

const WRITTEN = /^([0-3]\d|4[0-7]):([0-5]\d)$/;
const TYPED = /^(\d{1,2})(?:[:.]?([0-5]\d))?\s*([ap])\.?\s?m\.?\s*(\+1)?$/i;

/**
 * A time of a plan, which runs on into the day after, as the kitchen's clock has it; what is no
 * time stays as it is.
 * @example shownClock('25:30', { clock: '12 h' }) //=> '1:30 am +1'
 */
export function shownClock(time: string, { clock }: Clock): string {
  const written = WRITTEN.exec(time);
  if (!written || clock === '24 h') return time;
  const hour = Number(written[1]);
  const half = hour % 24 < 12 ? 'am' : 'pm';
  return `${hour % 12 || 12}:${written[2]} ${half}${hour < 24 ? '' : ' +1'}`;
}

/**
 * What somebody typed for a time, as a plan has it; what is not understood stays as it is, for the
 * hub to say what is wrong with it.
 * @example typedClock('5 pm') //=> '17:00'
 */
export function typedClock(text: string): string {
  const [, hour, minute = '00', half, next] = TYPED.exec(text.trim()) ?? [];
  if (!half || Number(hour) < 1 || Number(hour) > 12) return text.trim();
  const noon = half.toLowerCase() === 'p' ? 12 : 0;
  const hours = (Number(hour) % 12) + noon + (next ? 24 : 0);
  return `${String(hours).padStart(2, '0')}:${minute}`;
}

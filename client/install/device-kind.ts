import type { DeviceKind } from '../../shared/words/index.ts';

type Told = Pick<Navigator, 'userAgent' | 'maxTouchPoints'>;

/** What sort of device this is, as far as its browser says; an iPad passes itself off as a Mac. */
export function deviceKind({ userAgent, maxTouchPoints }: Told): DeviceKind | null {
  const says = (word: string) => userAgent.includes(word);
  if (says('iPhone') || says('iPad') || (says('Macintosh') && maxTouchPoints > 1)) return 'ios';
  if (says('Android')) return 'android';
  if (says('Firefox')) return 'firefox';
  if (says('CrOS')) return 'chromeos';
  if (says('Windows')) return 'windows';
  if (says('Macintosh')) return 'mac';
  return says('Linux') ? 'linux' : null;
}

import type { Language } from './say.ts';

/** That lengths of a plan are what hands took here, of so many steps of the catalogue. */
export function sayPaces(steps: number, language: Language): string {
  if (language === 'es') {
    const what = steps === 1 ? 'Un paso dura' : `${steps} pasos duran`;
    return `${what} lo que han tardado las manos aquí.`;
  }
  return `${steps === 1 ? 'One step is' : `${steps} steps are`} as long as hands here have taken.`;
}

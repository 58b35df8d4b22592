import type { CookPhrases } from './cook-phrases.ts';

export const cookSpanish: CookPhrases = {
  sides: { thickness: 'grueso', width: 'ancho', length: 'largo' },
  impossibleSize: (side, size) =>
    `Ninguna pieza tiene ${size} de ${side}: se admite de 0.5 cm a 2 m.`,
  parts: {
    water: 'agua',
    protein: 'proteína',
    fat: 'grasa',
    ash: 'ceniza',
    carbohydrate: 'carbohidrato',
  },
  impossibleShare: (part, share) => `Ninguna carne es ${share} ${part}: una parte va de 0 a 1.`,
  compositionDoesNotSum: (sum) => `Las partes de la carne suman ${sum}; deben sumar 1.`,
  impossibleStart: (temp) =>
    `Una pieza a ${temp} no puede entrar: el hielo va primero, y lo que hierve está cocido.`,
  noFirstStay: 'No se dice dónde está la pieza cuando entra.',
  staysOutOfOrder: (number) =>
    `La estancia ${number}, contando la entrada, empieza antes que la de arriba.`,
  impossibleAir: (temp) => `Ningún ahumador ni cuarto tiene aire a ${temp}.`,
  logOutOfOrder: (at) => `El aire de ${at} está anotado después de uno más tardío.`,
  targetAboveFire: (target, temp, hottest) =>
    `La meta «${target}» de ${temp} pasa del fuego: el aire más caliente es de ${hottest}.`,
  readingBeforeStart: (before) => `Una lectura se tomó ${before} antes de que entrara la pieza.`,
  readingAfterNow: (at) => `La lectura de ${at} es posterior a ahora.`,
  impossibleReading: (at, temp) => `Ningún centro marca ${temp}, como dice la lectura de ${at}.`,
  noBalance: (members) =>
    `Muy pocas de ${members} cocciones probadas se equilibran: los números no pueden ser.`,
  heads: {
    target: 'Meta',
    p10: '1 de 10 tras',
    p50: 'la mitad tras',
    p90: '9 de 10 tras',
    never: 'nunca',
    at: 'Tras',
    core: 'Centro',
    surface: 'Superficie',
    evaporated: 'Evaporado',
  },
  notCalibrated: 'Aún sin calibrar aquí.',
  leftOut: (leftOut, members) =>
    `${leftOut} de ${members} cocciones probadas no se equilibran y no cuentan.`,
};

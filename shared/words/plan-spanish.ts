import { las } from './at-clock.ts';
import type { PlanPhrases } from './plan-phrases.ts';

const piezas = (count: number) => (count === 1 ? '1 pieza' : `${count} piezas`);
const porciones = (count: number) => (count === 1 ? '1 porción' : `${count} porciones`);
const lugares = (count: number) => (count === 1 ? '1 lugar' : `${count} lugares`);
const cuartos = (count: number) => (count === 1 ? '1 cuarto de hora' : `${count} cuartos de hora`);

export const planSpanish: PlanPhrases = {
  quoted: (title) => `«${title}»`,
  unknownWord: (path, found, allowed) => `${path}: se encontró ${found}; se admite: ${allowed}.`,
  closesBeforeOpening: (service, opens, closes) =>
    [
      `${service} abre a ${las(opens)} y cierra a ${las(closes)}, que es antes:`,
      'una hora después de medianoche se escribe 25:00 o 1:00 am +1.',
    ].join(' '),
  salesAfterClosing: (of, counted, open) =>
    `${of}: hay ventas contadas para ${cuartos(counted)} y está abierto ${open}.`,
  portionOverPiece: (of, portion, piece) =>
    `${of}: una porción pesa ${portion} y una pieza da ${piece}: hágala de eso o menos.`,
  noSmoker: (of, set, each, nearest) =>
    [
      `${of}: ningún ahumador puede con ello a ${set}:`,
      `${each}${nearest === null ? '' : `; lo más cercano: ${nearest}`}.`,
    ].join(' '),
  unfit: {
    notWished: (smoker) => `${smoker} no está entre sus lugares`,
    heat: (smoker, coolest, hottest) => `${smoker} mantiene de ${coolest} a ${hottest}`,
    size: (smoker, needs, most) =>
      `${smoker} tiene ${most} por parrilla y una pieza ocupa ${needs}`,
    weight: (smoker, needs, most) =>
      `${smoker} aguanta ${most} por parrilla y una pieza pesa ${needs}`,
  },
  nearest: {
    heat: (smoker, set) => `${smoker} a ${set}`,
    size: (smoker, most) => `piezas de ${most} o menos, en ${smoker}`,
    weight: (smoker, most) => `piezas de ${most} o menos, en ${smoker}`,
  },
  noSkill: (of, step, skill, needs, has) =>
    [
      `${of}, «${step}» pide ${needs} con la destreza «${skill}»;`,
      `en el personal hay ${has}: ${needs - has === 1 ? 'falta' : 'faltan'} ${needs - has}.`,
    ].join(' '),
  handLacksSkill: (of, step, hand, skill) =>
    `${of}, «${step}» se dio a ${hand}, a quien no se le ha enseñado «${skill}».`,
  nobodyThere: (eve, day) =>
    `Nadie del personal trabaja el ${eve} ni el ${day}: póngale turnos en esos días o fechas.`,
  noShift: (of, step, needs, longest) =>
    longest === null
      ? `${of}, «${step}»: nadie que sepa hacerlo trabaja ese día ni el anterior.`
      : [
          `${of}, «${step}» dura ${needs} por pieza; quien`,
          `sabe hacerlo está máximo ${longest} seguidas.`,
        ].join(' '),
  noStation: (of, step, bench) =>
    `${of}, «${step}» pide un puesto de «${bench}»; ninguna estación lo tiene.`,
  noRoomToKeep: {
    cooler: (of, step, needs, has) =>
      `${of}, «${step}» pide ${needs} cm² de repisa de la cámara; hay ${has}.`,
    pans: (of, step, needs, has) =>
      `${of}, «${step}» pide ${lugares(needs)} de charola en los gabinetes; hay ${has}.`,
    whole: (of, step, needs, has) =>
      `${of}, «${step}» pide ${lugares(needs)} para piezas enteras en los gabinetes; hay ${has}.`,
  },
  limitTooShort: (of, from, to, needs, allowed) =>
    [
      `${of}: de «${from}» a «${to}» pasan ${needs} aun`,
      `con una pieza; se admite máximo ${allowed}.`,
    ].join(' '),
  serviceTooEarly: (of, opens, needs, has, can) =>
    `${of} pide ${needs} antes de abrir a ${las(opens)} y hay ${has}: puede abrir a ${las(can)}.`,
  batchTooLarge: (of, number, pieces, most, portions) =>
    [
      `${of}: la tanda ${number} es de ${piezas(pieces)} y de una vez`,
      `${most === 1 ? 'cabe' : 'caben'} ${most}:`,
      `hágala de ${porciones(portions)} o menos, o divídala.`,
    ].join(' '),
  batchBegun: (batch, pieces) =>
    `${batch} ya empezó, ${piezas(pieces)}: déjela en el plan y cambie las otras.`,
  notDelivered: (cut, needs, has) =>
    [
      `${cut}: ${needs === 1 ? 'hace' : 'hacen'} falta ${piezas(needs)} y`,
      `${has === 1 ? 'llegó' : 'llegaron'} ${has}: pida menos, o cuente lo que más llegó.`,
    ].join(' '),
  stepBegun: (batch, step) =>
    `${batch}: «${step}» ya empezó y no pudo ser así: deje como está lo que va antes.`,
  trimShort: (of, cut, needs, has, portions) =>
    [
      `${of} pide ${needs} de ${cut} y aquello de lo que`,
      `sale deja ${has}: alcanza para ${porciones(portions)}.`,
    ].join(' '),
  limitsChanged: {
    'no-reason': (from, to) =>
      `kitchen.json: los límites eran ${from} el último día y serían ${to}: diga por qué y quién ` +
      'lo decidió en una entrada nueva de limits.json, como muestra docs/safety.md.',
    rewritten: (from, to) =>
      `limits.json: una entrada que llevó a ${from} falta o no es la que era, y los límites ` +
      `serían ${to}: devuélvala, y ponga lo que cambió como entrada nueva al final.`,
    'other-profile': (_, to) =>
      `limits.json: su última entrada lleva a otro perfil que ${to}, que nombra kitchen.json: ` +
      'nombre el mismo en los dos.',
  },
  limitBroken: (about, limit, asked, found) =>
    [
      `${about} incumple un límite: ${limit}`,
      asked === null ? '' : `; pide ${asked}`,
      found === null ? '.' : `, previsto ${found}.`,
    ].join(''),
  conflict: {
    lagsContradict: (tasks, excess) =>
      `Los tiempos entre ${tasks} no caben juntos: sobran ${excess}.`,
    noResource: (task, amount, most) =>
      `«${task}» pide ${amount} a la vez de lo que solo hay ${most}.`,
    noRoom: (task, places, from, to, short, by) =>
      `«${task}» no cabe en ${places} entre ${from} y ${to}: faltan ${short}, ocupados por ${by}.`,
    goalTooEarly: (chain, short) =>
      `La cadena ${chain} es ${short} demasiado larga para su servicio.`,
    longGoalTooEarly: (links, longest, short) =>
      [
        `Una cadena de ${links} pasos es ${short} demasiado larga para su servicio.`,
        `Los más largos: ${longest}.`,
      ].join(' '),
    malformed: (where, what) => `El plan no tiene sentido en ${where}: ${what}.`,
  },
};

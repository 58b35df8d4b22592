import { las } from './at-clock.ts';
import type { Phrases, Whose } from './phrases.ts';

const by = (person: string | null) => (person ? ` por ${person}` : '');
const whose = ({ person, screen }: Whose) =>
  person === null && screen !== null ? ` en «${screen}»` : by(person);

export const spanish: Phrases = {
  slot: (smoker, rack) => `${smoker}, parrilla ${rack}`,
  titled: (title) => `«${title}»`,
  service: {
    inHand: (service, at, time) => `${service} ${at}: ${time} de margen`,
    short: (service, at, time) => `${service} ${at}: ${time} de retraso`,
    onTime: (service, at) => `${service} ${at}: justo a tiempo, sin margen`,
    on: 'en curso',
  },
  because: {
    after: (task, wait) => (wait ? `${wait} tras ${task}` : `tras ${task}`),
    hand: (person) => `espera a ${person}`,
    place: (slot, until) => `${slot} ocupado hasta ${until}`,
    fire: (smoker, until) => `${smoker} cambia el fuego hasta ${until}`,
    room: (task, until) => `sin lugar hasta ${until}: ${task}`,
    shift: (person, from) => `${person} está desde ${from}`,
    plan: (at) => `previsto a ${las(at)}`,
    now: 'puede empezar',
    down: (smoker, back) => `${smoker} apagado${back ? ` hasta ≈ ${back}` : ''}`,
    barred: (check) => `no puede salir: ${check}`,
    out: (person, back) => `falta alguien: ${person} no está${back ? ` hasta ≈ ${back}` : ''}`,
  },
  refusal: {
    noPlan: 'Todavía no hay plan para hoy: hágalo en el escritorio.',
    unknownTask: 'Esta tarea ya no está en el plan: mire otra vez la lista.',
    alreadyStarted: (at, who) => `Ya empezada${whose(who)} a ${las(at)}.`,
    alreadyDone: (at, who) => `Ya hecha${whose(who)} a ${las(at)}.`,
    anotherDay: (taps) =>
      `${taps > 1 ? `${taps} toques eran` : 'era'} de otro día, no del de la central: sin hacer.`,
    notStarted: 'Aún no ha empezado: toque primero empezar.',
    notByHand: (task) => `«${task}» no se toca: empieza y acaba con el trabajo de las manos.`,
    waitsFor: (before) => `«${before}» va antes y no está hecha.`,
    alreadyFollowed: (task) => `«${task}» ya empezó después: deshaga eso primero.`,
    countOutOfRange: (done, pieces) => `${done} no está entre 0 y ${pieces}: cuente otra vez.`,
    lateOutOfRange: (byTime, most) => `${byTime} de retraso no puede ser: diga hasta ${most}.`,
    notThisScreens: 'Esta pantalla no puede hacer eso: use la que corresponde.',
    unknownPerson: 'Nadie con ese nombre está en la lista: elija un nombre de la fila.',
    lacksSkill: (person, task) =>
      `A ${person} no se le ha enseñado «${task}»: déselo a quien lo sepa.`,
    impossibleTemperature: (temp) => `${temp} no puede ser: léalo y escríbalo otra vez.`,
    unknownPlace: 'Ese lugar no existe en esta cocina: elija uno de los dibujados.',
    slotTooSmall: (slot, need, free) =>
      `${slot} tiene libre ${free} y esta carga ocupa ${need}: elija otra parrilla.`,
    slotTaken: (slot, task, until) =>
      `${slot} tiene «${task}» hasta ${until}: elija otra parrilla.`,
    rackUnfit: (slot) =>
      `No puede ir en ${slot}: es pequeña, aguanta poco o no llega a esa temperatura.`,
    rackTooWeak: (slot, need, free) =>
      `Pesa ${need} y ${slot} aguanta ${free} más: elija otra parrilla.`,
    drips: (slot, other, limit) => `En ${slot} uno gotearía sobre el otro, «${other}»: ${limit}.`,
    fireDiffers: (slot, need, is) =>
      `${slot} está a ${is} y esta carga se cocina a ${need}: elija una parrilla con su calor.`,
    offAlready: 'Esa carga ya salió: elija una que esté en un ahumador.',
    inAlready: (at) => `Esa carga entró a ${las(at)}: ya no puede entrar antes.`,
    notSoEarly: (most, before) => {
      const why = before === null ? '' : `: va después de ${before}`;
      return most === null
        ? `No puede entrar antes de lo previsto${why}.`
        : `Puede entrar máximo ${most} antes${why}.`;
    },
    nothingForeseen: 'De esa carga no se prevé nada: tome antes la lectura del centro.',
    outOfDate: 'El plan ha cambiado: mire qué hace ahora el cambio.',
    nothingMoves: 'Esa carga ya está ahí: elija otra parrilla.',
    readOnly: (atSeq) =>
      [
        'No se puede guardar nada: la bitácora está dañada tras',
        `la entrada ${atSeq}. Avise al jefe y anote en papel.`,
      ].join(' '),
    hubFault: 'La central falló en esto y anotó por qué: avise a quien la cuida.',
    badMessage: (where, what) => `No se entiende en ${where}: ${what}.`,
  },
};

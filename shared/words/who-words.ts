import { type RoleName, roleWords } from './role-words.ts';
import type { Language } from './say.ts';

/** The fixed words of letting screens in and of people with a PIN. */
export type WhoWords = {
  readonly letThisIn: string;
  readonly showAtDesk: string;
  readonly orScan: string;
  codeLasts(minutes: number): string;
  readonly unclaimed: string;
  readonly ownersCode: string;
  readonly haveOwnersCode: string;
  readonly nameOfScreen: string;
  readonly deskName: string;
  readonly claim: string;
  readonly hubAway: string;
  readonly forgetful: string;

  readonly isOpen: string;
  readonly atTheDesk: string;
  readonly nobody: string;
  readonly pin: string;
  readonly iAmHere: string;
  readonly leave: string;
  readonly noOwner: string;

  readonly asking: string;
  readonly nobodyAsks: string;
  askedFrom(address: string): string;
  readonly letIn: string;
  readonly screens: string;
  readonly role: string;
  readonly roles: Readonly<Record<RoleName, string>>;
  readonly stations: string;
  readonly here: string;
  readonly thisOne: string;
  lastSeen(at: string): string;
  readonly neverSeen: string;
  readonly change: string;
  readonly keep: string;
  readonly leaveIt: string;
  readonly takeOff: string;
  reallyTakeOff(name: string): string;

  readonly people: string;
  readonly hasPin: string;
  readonly isOwner: string;
  readonly noPin: string;
  readonly setPin: string;
  readonly answersForHub: string;
  readonly clearPin: string;
  readonly reads: string;
  readonly whatEachReads: string;
  /** To who hears a screen. */
  whatReads(name: string): string;
  readonly asScreen: string;
};

const english: WhoWords = {
  letThisIn: 'Let this screen in',
  showAtDesk: 'Have the desk let in the screen that shows this code, under “Who”.',
  orScan: 'Or scan this with a phone that is a desk.',
  codeLasts: (minutes) =>
    minutes === 1 ? 'Good for one minute more.' : `Good for ${minutes} minutes more.`,
  unclaimed: 'This kitchen has no desk yet. Type the owner’s code from the hub’s terminal.',
  ownersCode: 'Owner’s code',
  haveOwnersCode: 'I have the owner’s code',
  nameOfScreen: 'Name of this screen',
  deskName: 'Desk',
  claim: 'make this the desk',
  hubAway: 'The hub does not answer. Still trying.',
  forgetful: 'This browser keeps nothing: leave the private window and ask again.',
  isOpen:
    'No screen is asked here who it is: whoever opens a page may do all that the page can. ' +
    'In a kitchen of your own the desk lets in each screen here.',
  atTheDesk: 'At the desk',
  nobody: 'nobody',
  pin: 'PIN',
  iAmHere: 'I am here',
  leave: 'leave',
  noOwner: 'Nobody has an owner’s PIN yet: any desk may change what is below. Set one.',
  asking: 'Asking to be let in',
  nobodyAsks: 'No screen is asking. Open this kitchen’s address on one, and it shows a code.',
  askedFrom: (address) => `from ${address}`,
  letIn: 'let it in',
  screens: 'Screens',
  role: 'As',
  roles: roleWords.en,
  stations: 'Stations',
  here: 'here now',
  thisOne: 'this one',
  lastSeen: (at) => `last here ${at}`,
  neverSeen: 'never here',
  change: 'change',
  keep: 'keep',
  leaveIt: 'leave it',
  takeOff: 'take off',
  reallyTakeOff: (name) => `take ${name} off now`,
  people: 'People',
  hasPin: 'has a PIN',
  isOwner: 'has an owner’s PIN',
  noPin: 'no PIN',
  setPin: 'set a PIN',
  answersForHub: 'answers for screens and PINs',
  clearPin: 'take the PIN away',
  reads: 'reads',
  whatEachReads: 'In which language their own page, and what a wall opens for them, is written.',
  whatReads: (name) => `${name} reads`,
  asScreen: 'like the screen',
};

const spanish: WhoWords = {
  letThisIn: 'Admitir esta pantalla',
  showAtDesk: 'En el escritorio, en «Quién», admita la pantalla que muestra este código.',
  orScan: 'O escanee esto con un celular que sea escritorio.',
  codeLasts: (minutes) => (minutes === 1 ? 'Vale un minuto más.' : `Vale ${minutes} minutos más.`),
  unclaimed:
    'Esta cocina aún no tiene escritorio. Escriba el código de responsable de la terminal.',
  ownersCode: 'Código de responsable',
  haveOwnersCode: 'Tengo el código de responsable',
  nameOfScreen: 'Nombre de esta pantalla',
  deskName: 'Escritorio',
  claim: 'que sea el escritorio',
  hubAway: 'La central no responde. Se sigue intentando.',
  forgetful: 'Este navegador no guarda nada: salga de la ventana privada y pida otra vez.',
  isOpen:
    'Aquí no se pregunta a ninguna pantalla quién es: quien abre una página puede hacer todo lo ' +
    'que la página permite. En su propia cocina el escritorio admite aquí cada pantalla.',
  atTheDesk: 'En el escritorio',
  nobody: 'nadie',
  pin: 'PIN',
  iAmHere: 'estoy aquí',
  leave: 'salir',
  noOwner:
    'Nadie tiene aún un PIN de responsable: cualquier escritorio puede cambiar lo de abajo. ' +
    'Ponga uno.',
  asking: 'Piden entrar',
  nobodyAsks:
    'Ninguna pantalla pide entrar. Abra en ella la dirección de esta cocina y mostrará un código.',
  askedFrom: (address) => `desde ${address}`,
  letIn: 'admitir',
  screens: 'Pantallas',
  role: 'Como',
  roles: roleWords.es,
  stations: 'Estaciones',
  here: 'aquí ahora',
  thisOne: 'esta',
  lastSeen: (at) => `aquí por última vez ${at}`,
  neverSeen: 'nunca aquí',
  change: 'cambiar',
  keep: 'guardar',
  leaveIt: 'dejarlo',
  takeOff: 'dar de baja',
  reallyTakeOff: (name) => `dar de baja ${name} ya`,
  people: 'Personas',
  hasPin: 'tiene PIN',
  isOwner: 'tiene PIN de responsable',
  noPin: 'sin PIN',
  setPin: 'poner PIN',
  answersForHub: 'responde de pantallas y PIN',
  clearPin: 'quitar el PIN',
  reads: 'lee',
  whatEachReads: 'En qué idioma está su propia página y lo que un tablero abre para esa persona.',
  whatReads: (name) => `${name} lee`,
  asScreen: 'como la pantalla',
};

/** @example whoWords.es.letIn //=> 'admitir' */
export const whoWords: Readonly<Record<Language, WhoWords>> = { en: english, es: spanish };

import type { Language } from './say.ts';

/** Devices whose steps differ; their names stand on the device itself. */
export type DeviceKind = 'ios' | 'android' | 'chromeos' | 'windows' | 'mac' | 'linux' | 'firefox';

/** The page on which a tablet comes to trust this kitchen's hub. */
export type InstallWords = {
  readonly title: string;
  readonly why: string;
  readonly get: string;
  readonly compare: string;
  readonly devices: Readonly<Record<DeviceKind, string>>;
  readonly steps: Readonly<Record<DeviceKind, readonly string[]>>;
  readonly onceInstalled: string;
  readonly goOn: string;
  readonly trusted: string;
  readonly scanFirst: string;
  readonly scanThen: string;
  readonly alsoAt: string;
  readonly onlyHere: string;
  readonly nothingToInstall: string;
};

const english: InstallWords = {
  title: 'Let this device trust the kitchen',
  why:
    'The hub speaks to its screens so that nobody on the network can listen or join in. For that ' +
    'this device has to know the kitchen’s own certificate. It is installed once, and vouches ' +
    'for this kitchen’s network alone.',
  get: 'Get the certificate',
  compare: 'The hub’s terminal shows the same fingerprint. If it shows another, stop here.',
  devices: {
    ios: 'iPad, iPhone',
    android: 'Android',
    chromeos: 'Chromebook',
    windows: 'Windows',
    mac: 'Mac',
    linux: 'Linux, Chromium',
    firefox: 'Firefox, any computer',
  },
  steps: {
    ios: [
      'Open this page in Safari, get the certificate, and allow the download.',
      'Settings, then “Profile Downloaded”: install it, with the device’s code.',
      'Settings, General, About, Certificate Trust Settings: switch it on there.',
    ],
    android: [
      'Set a screen lock if there is none, then get the certificate.',
      'Settings: search for “CA certificate”, and choose “Install anyway”.',
      'Pick the file coalface.crt among the downloads.',
    ],
    chromeos: [
      'Get the certificate.',
      'Settings, Privacy and security, Security, Manage certificates, Authorities: import it.',
      'Trust it for identifying websites, and for nothing else.',
    ],
    windows: [
      'Get the certificate, open the file, and choose “Install certificate”.',
      'Place it in “Trusted Root Certification Authorities”.',
      'Close the browser and open it again.',
    ],
    mac: [
      'Get the certificate and open the file: it goes to the keychain.',
      'In the keychain open it, then “Trust”, and set it to “Always Trust”.',
    ],
    linux: [
      'Get the certificate.',
      'Settings, Privacy and security, Security, Manage certificates: import it as an authority.',
      'Trust it for identifying websites.',
    ],
    firefox: [
      'Get the certificate; the browser asks what to trust it for.',
      'Tick “identify websites”. If nothing asks: Settings, Certificates, Authorities, Import.',
    ],
  },
  onceInstalled: 'Once it is installed, this page goes on by itself.',
  goOn: 'Go on to the screens',
  trusted: 'This device trusts the kitchen.',
  scanFirst: 'First: a tablet’s camera opens the way to install it.',
  scanThen: 'Then: its screens are here.',
  alsoAt: 'This machine has other addresses too:',
  onlyHere:
    'This hub serves its own machine alone, so no tablet can reach it. Start it with --lan to ' +
    'let in the devices of this network.',
  nothingToInstall: 'There is nothing to install: the certificate of this hub is trusted anyway.',
};

const spanish: InstallWords = {
  title: 'Que este aparato confíe en la cocina',
  why:
    'La central habla con sus pantallas sin que nadie en la red pueda escuchar ni meterse. Para ' +
    'eso este aparato tiene que conocer el certificado propio de la cocina. Se instala una vez, ' +
    'y responde solo por la red de esta cocina.',
  get: 'Bajar el certificado',
  compare: 'La terminal de la central muestra la misma huella. Si muestra otra, no siga.',
  devices: {
    ios: 'iPad, iPhone',
    android: 'Android',
    chromeos: 'Chromebook',
    windows: 'Windows',
    mac: 'Mac',
    linux: 'Linux, Chromium',
    firefox: 'Firefox, en cualquier computadora',
  },
  steps: {
    ios: [
      'Abra esta página en Safari, baje el certificado y permita la descarga.',
      'Ajustes, luego «Perfil descargado»: instálelo, con el código del aparato.',
      'Ajustes, General, Información, Configuración de confianza de los certificados: actívelo.',
    ],
    android: [
      'Ponga un bloqueo de pantalla si no lo hay, y baje el certificado.',
      'Ajustes: busque «Certificado de CA» y elija «Instalar de todas formas».',
      'Escoja el archivo coalface.crt entre las descargas.',
    ],
    chromeos: [
      'Baje el certificado.',
      'Configuración, Privacidad y seguridad, Seguridad, Administrar certificados, Entidades ' +
        'emisoras: impórtelo.',
      'Confíe en él para identificar sitios web, y para nada más.',
    ],
    windows: [
      'Baje el certificado, abra el archivo y elija «Instalar certificado».',
      'Colóquelo en «Entidades de certificación raíz de confianza».',
      'Cierre el navegador y ábralo otra vez.',
    ],
    mac: [
      'Baje el certificado y abra el archivo: queda en el llavero.',
      'En el llavero ábralo, luego «Confiar», y ponga «Confiar siempre».',
    ],
    linux: [
      'Baje el certificado.',
      'Configuración, Privacidad y seguridad, Seguridad, Administrar certificados: impórtelo ' +
        'como autoridad.',
      'Confíe en él para identificar sitios web.',
    ],
    firefox: [
      'Baje el certificado; el navegador pregunta para qué confiar en él.',
      'Marque «identificar sitios web». Si nada pregunta: Ajustes, Certificados, Autoridades, ' +
        'Importar.',
    ],
  },
  onceInstalled: 'Una vez instalado, esta página sigue sola.',
  goOn: 'Seguir a las pantallas',
  trusted: 'Este aparato confía en la cocina.',
  scanFirst: 'Primero: la cámara de la tableta abre el camino para instalarlo.',
  scanThen: 'Después: aquí están sus pantallas.',
  alsoAt: 'Esta máquina tiene también otras direcciones:',
  onlyHere:
    'Esta central sirve solo a su propia máquina, así que ninguna tableta la alcanza. Arránquela ' +
    'con --lan para dejar entrar a los aparatos de esta red.',
  nothingToInstall: 'No hay nada que instalar: el certificado de esta central ya es de confianza.',
};

export const installWords: Readonly<Record<Language, InstallWords>> = {
  en: english,
  es: spanish,
};

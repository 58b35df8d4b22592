import type { InstallWords } from './install-phrases.ts';

const toHome = {
  title: 'Póngala en la pantalla de inicio',
  how:
    'Primero abra la pantalla de este aparato. iPad, iPhone: en Safari toque Compartir y ' +
    '«Agregar a Inicio». Android: en Chrome toque los tres puntos y «Agregar a la pantalla ' +
    'principal».',
};

export const installSpanish: InstallWords = {
  title: 'Conectar una tableta o un celular',
  screens: 'Todas las pantallas',
  why:
    'Se hace una vez en cada aparato y toma unos minutos. Así nadie en el wifi puede espiar ni ' +
    'tocar por usted.',
  found: {
    title: 'La misma red',
    how: 'Listo: este aparato encontró la computadora de la cocina. Déjelo en este wifi.',
  },
  get: {
    title: 'Baje el certificado',
    how: 'Es un archivo chico, coalface.crt, y solo vale en la red de esta cocina.',
  },
  compare: {
    title: 'Compare',
    how:
      'La ventana donde se arrancó Coalface, en la computadora de la cocina, muestra las mismas ' +
      'letras. Si son otras, no siga.',
  },
  trust: { title: 'Confíe en él', how: 'Siga los pasos de este aparato.' },
  notTried:
    'Los pasos de iPad, iPhone y Android están tomados de la ayuda de sus fabricantes; quienes ' +
    'hicieron esta página no los probaron en uno. Los nombres pueden variar un poco.',
  devices: {
    ios: 'iPad, iPhone',
    android: 'Android',
    chromeos: 'Chromebook',
    windows: 'Windows, Chrome o Edge',
    mac: 'Mac, Chrome o Safari',
    linux: 'Linux, Chrome o Chromium',
    firefox: 'Firefox, en cualquier computadora',
  },
  others: 'Otro aparato',
  steps: {
    ios: [
      'Tenga esta página abierta en Safari. Toque «Baje el certificado» y luego «Permitir».',
      'Abra Configuración. Casi hasta arriba toque «Perfil descargado», luego «Instalar», y ' +
        'ponga el código. (¿No está? General, «VPN y administración de dispositivos».)',
      'Configuración, General, Información y, hasta abajo, «Configuración de confianza de ' +
        'los certificados». Actívelo ahí, en la confianza total para certificados raíz.',
      'Regrese a esta página.',
    ],
    android: [
      'Toque «Baje el certificado» y guarde el archivo.',
      'Abra Configuración y busque «Certificado de CA». (Está en Seguridad, «Encriptación y ' +
        'credenciales», «Instalar un certificado».)',
      'Toque «Certificado de CA» y luego «Instalar de todos modos». Pide el bloqueo de ' +
        'pantalla, o que ponga uno.',
      'Escoja coalface.crt entre las descargas y regrese a esta página.',
    ],
    chromeos: [
      'Baje el certificado.',
      'Configuración, Privacidad y seguridad, Seguridad, «Administrar certificados», «Entidades ' +
        'emisoras», «Importar»: escoja coalface.crt.',
      'Marque que se confíe en él para identificar sitios web, y nada más.',
    ],
    windows: [
      'Baje el certificado, abra el archivo y elija «Instalar certificado…», «Usuario actual».',
      'Elija «Colocar todos los certificados en el siguiente almacén», «Examinar», «Entidades de ' +
        'certificación raíz de confianza». Luego Siguiente, Finalizar, Sí.',
      'Cierre todas las ventanas del navegador y abra esta página otra vez.',
    ],
    mac: [
      'Baje el certificado y abra el archivo: queda en el llavero «inicio de sesión».',
      'En Acceso a Llaveros haga doble clic en «Coalface, …», abra «Confiar» y ponga «Confiar ' +
        'siempre».',
      'Cierre esa ventana, ponga la contraseña y regrese.',
    ],
    linux: [
      'Baje el certificado.',
      'Configuración, Privacidad y seguridad, Seguridad, «Administrar certificados». En ' +
        '«Entidades emisoras» (en los nuevos, entre los certificados que instaló usted) importe ' +
        'coalface.crt.',
      'Si pregunta, marque que se confíe en él para identificar sitios web.',
    ],
    firefox: [
      'Baje el certificado; el navegador pregunta para qué confiar en él: marque «identificar ' +
        'sitios web».',
      'Si nada pregunta: Ajustes, Privacidad y seguridad, «Ver certificados…», «Autoridades», ' +
        '«Importar…».',
    ],
  },
  open: {
    title: 'Abra las pantallas',
    how: 'Esta página sigue sola cuando el aparato ya confía en la cocina. Si no, toque aquí.',
  },
  goOn: 'Seguir a las pantallas',
  join: {
    title: 'La misma red',
    how: 'Conecte el aparato al wifi, o al cable, de la computadora de esta cocina.',
  },
  scanFirst: {
    title: 'Escanee esto con su cámara',
    how: 'Abre el certificado y los pasos de ese aparato. ¿Sin cámara? Escriba la dirección.',
  },
  compareThere: {
    title: 'Compare',
    how: 'La página que se abre muestra estas letras. Si muestra otras, no siga.',
  },
  scanThen: {
    title: 'Siga los pasos de allá',
    how: 'Luego pasa sola a las pantallas. Si no, escanee esto.',
  },
  letIn: {
    title: 'Admítalo en el escritorio',
    how: 'Si muestra un código, escójalo en el escritorio, en «Quién». La demo no pide nada.',
  },
  toHome,
  alsoAt: 'La computadora de la cocina tiene también otras direcciones:',
  nothingToInstall:
    'No hay certificado que instalar: los aparatos ya confían en el de esta computadora.',
  scanOnly: {
    title: 'Escanee esto con su cámara',
    how: 'Abre las pantallas. ¿Sin cámara? Escriba la dirección.',
  },
  inTheOpen:
    'No hay certificado que instalar: la computadora de esta cocina se arrancó con --plain. ' +
    'Cualquiera en la red puede espiar.',
  alone:
    'Ningún otro aparato llega aún a esta cocina: Coalface se arrancó solo para esta computadora.',
  stopIt: {
    title: 'Deténgalo',
    how: 'En la ventana donde se arrancó, con Ctrl-C. Todo lo que se tocó queda guardado.',
  },
  startIt: {
    title: 'Arránquelo con --lan',
    how: 'Lo demás igual; con --data y la carpeta, si así se había arrancado.',
  },
  comeBack: {
    title: 'Abra esta página otra vez',
    how: 'Entonces muestra códigos, y la tableta los escanea.',
  },
  ifPlain:
    '¿Se arrancó con --lan --plain? Entonces no hay certificado, y esta página no puede saberlo: ' +
    'las tabletas abren la dirección http que muestra la ventana.',
};

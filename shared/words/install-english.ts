import type { InstallWords } from './install-phrases.ts';

const toHome = {
  title: 'Put it on the home screen',
  how:
    'Open this device’s screen first. iPad, iPhone: in Safari tap Share, then “Add to Home ' +
    'Screen”. Android: in Chrome tap the three dots, then “Add to Home screen”.',
};

export const installEnglish: InstallWords = {
  title: 'Connect a tablet or phone',
  screens: 'All screens',
  why: 'Once for each device; a few minutes. Then nobody on the Wi-Fi listens in or taps for you.',
  found: {
    title: 'Same network',
    how: 'Done: this device has found the kitchen’s computer. Keep it on this Wi-Fi.',
  },
  get: {
    title: 'Get the certificate',
    how: 'It is a small file, coalface.crt, and good for this kitchen’s network alone.',
  },
  compare: {
    title: 'Compare',
    how:
      'The window in which Coalface was started, on the kitchen’s computer, shows the same ' +
      'letters. If they differ, stop here.',
  },
  trust: { title: 'Trust it', how: 'Follow the steps for this device.' },
  notTried:
    'The steps for iPad, iPhone and Android are told from their makers’ help, and were not tried ' +
    'on one by those who wrote this page. Names may differ a little.',
  devices: {
    ios: 'iPad, iPhone',
    android: 'Android',
    chromeos: 'Chromebook',
    windows: 'Windows, Chrome or Edge',
    mac: 'Mac, Chrome or Safari',
    linux: 'Linux, Chrome or Chromium',
    firefox: 'Firefox, any computer',
  },
  others: 'Another device',
  steps: {
    ios: [
      'Have this page open in Safari. Tap “Get the certificate”, then “Allow”.',
      'Open Settings. Near the top tap “Profile Downloaded”, then “Install”, and type the ' +
        'passcode. (Not there? General, “VPN & Device Management”.)',
      'Settings, General, About, and at the very bottom “Certificate Trust Settings”. Switch it ' +
        'on under “Enable full trust for root certificates”.',
      'Come back to this page.',
    ],
    android: [
      'Tap “Get the certificate”, and keep the file.',
      'Open Settings and search for “CA certificate”. (It is under Security, “Encryption & ' +
        'credentials”, “Install a certificate”.)',
      'Tap “CA certificate”, then “Install anyway”. It asks for the screen lock, or to set one.',
      'Choose coalface.crt among the downloads, and come back to this page.',
    ],
    chromeos: [
      'Get the certificate.',
      'Settings, Privacy and security, Security, “Manage certificates”, “Authorities”, “Import”: ' +
        'choose coalface.crt.',
      'Tick “Trust this certificate for identifying websites”, and nothing else.',
    ],
    windows: [
      'Get the certificate, open the file, and choose “Install Certificate…”, “Current User”.',
      'Choose “Place all certificates in the following store”, “Browse”, “Trusted Root ' +
        'Certification Authorities”. Then Next, Finish, Yes.',
      'Close all windows of the browser, and open this page again.',
    ],
    mac: [
      'Get the certificate and open the file: it goes to the keychain “login”.',
      'In Keychain Access double-click “Coalface, …”, open “Trust”, and set “When using this ' +
        'certificate” to “Always Trust”.',
      'Close that window, type the password, and come back.',
    ],
    linux: [
      'Get the certificate.',
      'Settings, Privacy and security, Security, “Manage certificates”. Under “Authorities” (in ' +
        'newer ones “Custom”, “Installed by you”, “Trusted Certificates”) import coalface.crt.',
      'If it asks, tick “Trust this certificate for identifying websites”.',
    ],
    firefox: [
      'Get the certificate; the browser asks what to trust it for: tick “identify websites”.',
      'If nothing asks: Settings, Privacy & Security, “View Certificates…”, “Authorities”, ' +
        '“Import…”.',
    ],
  },
  open: {
    title: 'Open the screens',
    how: 'This page goes on by itself once the device trusts the kitchen. If not, tap here.',
  },
  goOn: 'Go on to the screens',
  join: {
    title: 'Same network',
    how: 'Put the device on the Wi-Fi, or the cable, that this kitchen’s computer is on.',
  },
  scanFirst: {
    title: 'Scan this with its camera',
    how: 'It opens the certificate and the steps for that device. No camera? Type the address.',
  },
  compareThere: {
    title: 'Compare',
    how: 'The page that opens shows these letters. If it shows others, stop.',
  },
  scanThen: {
    title: 'Follow the steps there',
    how: 'Then it goes on to the screens by itself. If it does not, scan this.',
  },
  letIn: {
    title: 'Let it in at the desk',
    how: 'Where it shows a code, choose that code at the desk, under “Who”. The demo asks nobody.',
  },
  toHome,
  alsoAt: 'The kitchen’s computer has other addresses too:',
  nothingToInstall:
    'There is no certificate to install: devices trust the one of this kitchen’s computer already.',
  scanOnly: {
    title: 'Scan this with its camera',
    how: 'It opens the screens. No camera? Type the address.',
  },
  inTheOpen:
    'There is no certificate to install: this kitchen’s computer was started with --plain. ' +
    'Whoever is on the network can listen in.',
  alone:
    'No other device can reach this kitchen yet: Coalface was started for this computer alone.',
  stopIt: {
    title: 'Stop it',
    how: 'In the window in which it was started, with Ctrl-C. All that was tapped is kept.',
  },
  startIt: {
    title: 'Start it with --lan',
    how: 'The rest as before; with --data and the folder, if it was started with that.',
  },
  comeBack: { title: 'Open this page again', how: 'It has codes then, which the tablet scans.' },
  ifPlain:
    'Was it started with --lan --plain? Then there is no certificate, and this page cannot know: ' +
    'tablets open the http address that the window shows.',
};

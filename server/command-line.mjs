import { isIP } from 'node:net';
import { parseArgs } from 'node:util';

// Read before anything is installed, so that a slip costs nobody a wait: it may import nothing but
// Node itself.

export const USUAL_PORT = 4600;

export const HELP = `Coalface: a kitchen display and task board for a barbecue line

  npm start                         a demo day that is happening now, thrown away at the end
  npm start -- --data my-kitchen    a real kitchen, kept in the folder my-kitchen
  npm start -- --demo my-demo       the demo, kept in the folder my-demo and gone on with next time

Options
  --data DIR        Where the kitchen is: kitchen.json, catalogue.json, plans/YYYY-MM-DD.json, and
                    its log in log.sqlite. An empty folder is given a small kitchen to start from:
                    two smokers, three hands, three dishes, and a plan for tomorrow.
                    A plan that is changed there is taken up at once, if it is sound.
  --all-dishes      An empty folder is given every dish of the demo to choose from, not three.
  --demo DIR        As --data, for the demo.
  --demo-speed N    The clock runs N times as fast, to try a day out. Times in the log are that
                    clock's, so give a kitchen that is tried out a folder of its own.
  --demo-from WHEN  What the clock of that folder shows at its first start, such as 2026-11-29T09:30
                    on the kitchen's own wall: a plan can be tried out before its day.
  --port N          The port to listen on (usually ${USUAL_PORT}, or the next that is free; 0: any).
  --lan             Lets the other devices on this network in. Without it only this machine may:
                    what a desk has let in may tap, in a demo whoever reaches the hub.
  --host ADDRESS    As --lan, but on this one address of the machine.
  --plain           Speaks plain HTTP on the network, as behind a proxy that speaks TLS. Without it
                    the hub is its own authority there: tablets install its certificate once, from
                    a page that it shows them. See docs/transport.md.
  --cert FILE       A certificate that somebody else signed, as PEM: the chain, the hub’s own first.
  --key FILE        Its key, as PEM. Both files are read again every hour.
  --name NAME       A name or address by which screens find the hub, beside what this machine knows
                    of itself. May be said more than once.
  --open            Asks no screen who it is: whoever reaches the hub may do what the page they open
                    may. A demo is always so; a kitchen lets in only what its desk has let in.
  --mqtt URL        Takes readings from thermometers over MQTT, from the broker at URL, such as
                    mqtt://192.168.1.9:1883. Without it none is asked. See docs/cook.md.
  --claim           Prints a new owner’s code, for when no desk can be used any more.
  --help            This.

Ctrl-C stops it. What a screen shows as kept is on disk by then.
`;

const known = /** @type {const} */ ({
  data: { type: 'string' },
  demo: { type: 'string' },
  'demo-speed': { type: 'string' },
  'demo-from': { type: 'string' },
  port: { type: 'string' },
  host: { type: 'string' },
  lan: { type: 'boolean' },
  plain: { type: 'boolean' },
  cert: { type: 'string' },
  key: { type: 'string' },
  name: { type: 'string', multiple: true },
  open: { type: 'boolean' },
  mqtt: { type: 'string' },
  claim: { type: 'boolean' },
  'all-dishes': { type: 'boolean' },
  help: { type: 'boolean', short: 'h' },
});

/** @typedef {ReturnType<typeof parse>} Given what was typed, each under its option */

/**
 * What was typed, or all that is wrong with it.
 *
 * @param {readonly string[]} args
 * @returns {{ help: true } | { help: false, wrong: string[] } | { help: false, given: Given }}
 */
export function readWords(args) {
  const given = tried(args);
  if (typeof given === 'string') return { help: false, wrong: [given] };
  if (given.help) return { help: true };
  const wrong = [...saidAgain(args), ...faultsOf(given)];
  return wrong.length > 0 ? { help: false, wrong } : { help: false, given };
}

/** Of two folders or ports one would be taken and nothing said. @param {readonly string[]} args */
function saidAgain(args) {
  const { tokens } = parseArgs({ args: [...args], options: known, tokens: true });
  const named = tokens.flatMap((token) =>
    token.kind === 'option' && token.value !== undefined ? [token.name] : [],
  );
  const again = new Set(named.filter((name, i) => named.indexOf(name) < i));
  again.delete('name');
  return [...again].map((name) => `--${name} is said more than once`);
}

/** @param {Given} given */
function faultsOf(given) {
  const speed = Number(given['demo-speed'] ?? 1);
  const { port } = given;
  return [
    given.data !== undefined && given.demo !== undefined && '--data or --demo, not both',
    given.lan && given.host !== undefined && '--lan or --host, not both',
    !(speed >= 1 && speed <= 3600) && '--demo-speed is a number from 1 to 3600',
    ...demoFromFaults(given),
    // An empty word, as of a variable that is not set, is no 0.
    port !== undefined &&
      !(/^\d+$/.test(port) && Number(port) < 65_536) &&
      '--port is a whole number from 0 to 65535',
    given.host !== undefined &&
      isIP(given.host) === 0 &&
      '--host is an address such as 192.168.1.5',
    (given.cert === undefined) !== (given.key === undefined) && '--cert and --key belong together',
    given.cert !== undefined && given.plain && '--plain or --cert, not both',
    given.name?.some((each) => !/^[\w.:-]+$/.test(each)) &&
      '--name is a name or an address, such as kitchen.example, without https:// or a port',
    given.mqtt !== undefined &&
      !/^mqtts?:\/\/[^/]/.test(given.mqtt) &&
      '--mqtt is an address such as mqtt://192.168.1.9:1883',
    given.claim &&
      (given.open || given.data === undefined) &&
      '--claim is for a kitchen (--data) that is not --open',
    given['all-dishes'] &&
      given.data === undefined &&
      '--all-dishes is for a new kitchen (--data); a demo has them all',
    given.data === '' && '--data names a folder',
    given.demo === '' && '--demo names a folder',
  ].filter((fault) => typeof fault === 'string');
}

/**
 * A moment on the kitchen's own wall; null where the word is none.
 *
 * @param {string} word
 */
export function dayAndTime(word) {
  const [day = '', time = ''] = word.split('T');
  const isDay = /^\d{4}-\d\d-\d\d$/.test(day) && isInCalendar(day);
  return isDay && /^([01]\d|2[0-3]):[0-5]\d$/.test(time) ? { day, time } : null;
}

/** @param {string} day */
function isInCalendar(day) {
  const at = new Date(`${day}T00:00:00Z`);
  return !Number.isNaN(at.getTime()) && at.toISOString().startsWith(day);
}

/** @param {Given} given */
function demoFromFaults(given) {
  const word = given['demo-from'];
  if (word === undefined) return [];
  return [
    dayAndTime(word) === null && '--demo-from is a day and a time such as 2026-11-29T09:30',
    given.data === undefined && '--demo-from is for a kitchen (--data); a demo begins at its noon',
  ];
}

/** @param {readonly string[]} args */
const parse = (args) => parseArgs({ args: [...args], options: known, strict: true }).values;

/** @param {readonly string[]} args */
function tried(args) {
  try {
    return parse(args);
  } catch (fault) {
    return plainly(fault);
  }
}

/** Node's own words on it are for those who write programs. @param {unknown} fault */
function plainly(fault) {
  const { code = '', message } = /** @type {NodeJS.ErrnoException} */ (fault);
  const [named = ''] = /(?<=')[^' ]+/.exec(message.replace('-h, ', '')) ?? [];
  switch (code) {
    case 'ERR_PARSE_ARGS_UNKNOWN_OPTION':
      return `There is no option ${named}`;
    case 'ERR_PARSE_ARGS_UNEXPECTED_POSITIONAL':
      return (
        `“${named}” belongs to no option; a kitchen’s folder is said as: ` +
        `npm start -- --data ${named}`
      );
    default:
      return / does not take /.test(message)
        ? `${named} takes no word after it`
        : `${named} needs a word after it that does not begin with -`;
  }
}

/** A pedal that bounces presses again sooner than any foot. */
const TWICE_MS = 400;

/**
 * Works a wall from a keyboard, a pedal or a button for the elbow, which are keyboards of one to
 * three keys. Down and up (or page down and page up) go from one line's place to tap to the next,
 * right and left through every place, enter or space taps, escape leaves what is open. Where
 * nothing is chosen yet, the first press only shows where it would tap. A key that is held down, or
 * bounces, taps once.
 */
export function followKeys(page: Document): void {
  let pressedMs = Number.NEGATIVE_INFINITY;
  page.addEventListener(
    'keydown',
    (event) => {
      const [target] = event.composedPath();
      if (event.ctrlKey || event.metaKey || event.altKey || isField(target)) return;
      if (isPress(event.key)) {
        const chosen = chosenOn(page);
        const isQuick = chosen?.dataset['quick'] !== undefined;
        const isTwice = event.timeStamp - pressedMs < TWICE_MS && !isQuick;
        if (chosen && !isTwice && !event.repeat) pressedMs = event.timeStamp;
        else event.preventDefault();
        if (!chosen) stopsOn(page)[0]?.focus();
        return;
      }
      if (event.key === 'Escape') leaveOn(page)?.click();
      else if (goOn(page, event.key)) event.preventDefault();
    },
    { capture: true },
  );
}

const isPress = (key: string) => key === 'Enter' || key === ' ';

const isField = (target: EventTarget | undefined) =>
  target instanceof HTMLInputElement || target instanceof HTMLSelectElement;

const STEPS: Readonly<Record<string, readonly ['line' | 'place', 1 | -1]>> = {
  ArrowDown: ['line', 1],
  PageDown: ['line', 1],
  ArrowUp: ['line', -1],
  PageUp: ['line', -1],
  ArrowRight: ['place', 1],
  ArrowLeft: ['place', -1],
};

/** Whether the key goes anywhere. */
function goOn(page: Document, key: string): boolean {
  const step = STEPS[key];
  if (!step) return false;
  const [of, by] = step;
  const all = placesIn(page.body);
  const stops = of === 'line' ? stopsOn(page) : all;
  const chosen = chosenOn(page);
  const from = chosen ? all.indexOf(chosen) : -1;
  const places = stops.map((stop) => all.indexOf(stop));
  const next =
    by > 0 ? places.find((place) => place > from) : places.findLast((place) => place < from);
  all[next ?? places.at(by > 0 ? 0 : -1) ?? -1]?.focus();
  return stops.length > 0;
}

/** The places that a wall is worked by: rings, and where a wall has none, all of them. */
function stopsOn(page: Document): HTMLElement[] {
  const all = placesIn(page.body);
  const rings = all.filter((place) => hostOf(place)?.localName === 'tap-ring');
  return rings.length > 0 ? rings : all;
}

const hostOf = (place: Element) => {
  const root = place.getRootNode();
  return root instanceof ShadowRoot ? root.host : null;
};

/** Every place to tap, through every shadow root, in the order of the page. */
function placesIn(root: ParentNode): HTMLElement[] {
  return [...root.querySelectorAll<HTMLElement>('*')].flatMap((each) => {
    if (each instanceof HTMLButtonElement) return each.disabled ? [] : [each];
    return each.shadowRoot && !each.hidden ? placesIn(each.shadowRoot) : [];
  });
}

function chosenOn(page: Document): HTMLElement | null {
  let chosen = page.activeElement;
  while (chosen?.shadowRoot?.activeElement) chosen = chosen.shadowRoot.activeElement;
  return chosen instanceof HTMLButtonElement ? chosen : null;
}

/** The box that leaves things as they are, where one is open. */
const leaveOn = (page: Document) =>
  placesIn(page.body).find((place) => place.classList.contains('leaves'));

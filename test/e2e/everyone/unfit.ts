/**
 * What does not fit a screen: words that are cut off or lie over one another, places to tap that
 * nobody reaches, a page wider than its glass. What can be scrolled to is there; what left as a
 * whole, because a line had no room for it, is not missed here. Runs in the page, so all it needs
 * is in it. `within`: the name of the part that is looked at, else all of the page.
 */
export function unfit(within: string | null): string[] {
  type Box = readonly [left: number, top: number, right: number, bottom: number];
  type Word = { readonly text: string; readonly holder: Element; readonly boxes: readonly Box[] };
  /** Browsers round letters and edges. */
  const ROUNDING = 2;

  const above = (node: Node): Element | null => {
    const slot = node instanceof Element || node instanceof Text ? node.assignedSlot : null;
    if (slot) return slot;
    const { parentNode } = node;
    if (parentNode instanceof ShadowRoot) return parentNode.host;
    return parentNode instanceof Element ? parentNode : null;
  };
  const roundIt = (node: Element): Element[] => {
    const up = above(node);
    return up ? [node, ...roundIt(up)] : [node];
  };
  const boxOf = ({ left, top, right, bottom }: DOMRect): Box => [left, top, right, bottom];
  const isPage = (each: Element) => each === document.body || each === document.documentElement;
  const isScrolled = (overflow: string) => overflow === 'auto' || overflow === 'scroll';

  type Edges = {
    readonly isSeen: boolean;
    /** What is outside stays hidden: it is behind an edge that no finger moves. */
    readonly box: Box;
    /** What is outside would have to be scrolled to. */
    readonly now: Box;
  };
  const meet = (a: Box, b: Box): Box => [
    Math.max(a[0], b[0]),
    Math.max(a[1], b[1]),
    Math.min(a[2], b[2]),
    Math.min(a[3], b[3]),
  ];
  function edgesOf(holder: Element): Edges {
    let [left, top, right, bottom] = [0, -1e6, innerWidth, 1e6];
    let [acrossEnds, downEnds] = [false, false];
    let now: Box = [0, 0, innerWidth, innerHeight];
    for (const each of roundIt(holder)) {
      const { overflowX, overflowY, visibility, display, position } = getComputedStyle(each);
      if (visibility === 'hidden' || display === 'none' || each.matches('.unseen')) {
        return { isSeen: false, box: now, now };
      }
      if (isPage(each) || each.localName === 'svg') continue;
      if (isScrolled(overflowX) && each.scrollWidth > each.clientWidth) acrossEnds = true;
      if (isScrolled(overflowY) && each.scrollHeight > each.clientHeight) downEnds = true;
      const box = boxOf(each.getBoundingClientRect());
      if (overflowX !== 'visible' || overflowY !== 'visible') now = meet(now, box);
      if (overflowX !== 'visible' && !acrossEnds) {
        [left, right] = [Math.max(left, box[0]), Math.min(right, box[2])];
      }
      if (overflowY !== 'visible' && !downEnds) {
        [top, bottom] = [Math.max(top, box[1]), Math.min(bottom, box[3])];
      }
      if (position === 'fixed') break;
    }
    if (acrossEnds) [left, right] = [-1e6, 1e6];
    return { isSeen: true, box: [left, top, right, bottom], now };
  }

  const words: Word[] = [];
  const places: Element[] = [];
  const walk = (node: Node): void => {
    if (node instanceof Text) {
      const text = node.data.replace(/\s+/g, ' ').trim();
      const holder = above(node);
      if (text === '' || !holder || holder.closest('style, script, option')) return;
      // What is folded away has its boxes nevertheless.
      if (!holder.checkVisibility()) return;
      const range = document.createRange();
      range.selectNodeContents(node);
      const sizePx = Number.parseFloat(getComputedStyle(holder).fontSize);
      const boxes = [...range.getClientRects()]
        .filter(({ width }) => width > 0)
        .map((rect): Box => {
          // Letters fill the middle of their line; what is over and under them may be cut.
          const middle = (rect.top + rect.bottom) / 2;
          return [rect.left, middle - sizePx * 0.36, rect.right, middle + sizePx * 0.3];
        });
      if (boxes.length > 0) words.push({ text, holder, boxes });
      return;
    }
    if (!(node instanceof Element || node instanceof ShadowRoot)) return;
    if (node instanceof Element && node.matches('button, a, input, select, textarea, summary')) {
      places.push(node);
    }
    const shown = node instanceof Element ? (node.shadowRoot ?? node) : node;
    for (const child of shown.childNodes) walk(child);
    if (node instanceof Element && node.shadowRoot)
      for (const child of node.childNodes) walk(child);
  };
  const find = (root: Document | ShadowRoot, name: string): Element | null => {
    const found = [...root.querySelectorAll('*')].map(
      (each) =>
        (each.localName === name && each) || (each.shadowRoot && find(each.shadowRoot, name)),
    );
    return found.find((each) => each) || null;
  };
  walk((within && find(document, within)) || document.body);

  const partOf = (of: Element) => {
    const root = of.getRootNode();
    return root instanceof ShadowRoot ? root.host.localName : 'page';
  };
  /** A tap on it says the whole. */
  const mayBeShort = (holder: Element) =>
    getComputedStyle(holder).textOverflow === 'ellipsis' &&
    roundIt(holder).some((each) => each.matches('button[aria-expanded]'));

  const topAt = (x: number, y: number): Element | null => {
    let at = document.elementFromPoint(x, y);
    while (at?.shadowRoot) {
      const deeper = at.shadowRoot.elementFromPoint(x, y);
      // Where nothing in it is hit, what is round it is.
      if (!deeper || deeper.getRootNode() !== at.shadowRoot) break;
      at = deeper;
    }
    return at;
  };
  /** Nothing that cannot be seen through lies over its middle. */
  const isOnTop = (holder: Element, [l, t, r, b]: Box): boolean => {
    const round = new Set(roundIt(holder));
    const at = topAt((l + r) / 2, (t + b) / 2);
    for (const each of at ? roundIt(at) : []) {
      if (round.has(each)) return true;
      if (getComputedStyle(each).backgroundColor !== 'rgba(0, 0, 0, 0)') return false;
    }
    return true;
  };

  const faults: string[] = [];
  const wide = document.documentElement.scrollWidth;
  if (wide > innerWidth) faults.push(`the page is ${wide} wide on ${innerWidth}`);

  const seen: { readonly text: string; readonly holder: Element; readonly box: Box }[] = [];
  for (const { text, holder, boxes } of words) {
    const { box: edges, now, isSeen } = edgesOf(holder);
    if (!isSeen) continue;
    const on = boxes.filter(
      ([l, t, r, b]) =>
        r > edges[0] + 1 && l < edges[2] - 1 && b > edges[1] + 1 && t < edges[3] - 1,
    );
    if (on.length === 0) continue;
    const isWhole =
      on.length === boxes.length &&
      boxes.every(
        ([l, t, r, b]) =>
          l >= edges[0] - ROUNDING &&
          t >= edges[1] - ROUNDING &&
          r <= edges[2] + ROUNDING &&
          b <= edges[3] + ROUNDING,
      );
    if (!isWhole && !mayBeShort(holder)) faults.push(`cut off in ${partOf(holder)}: ${text}`);
    for (const box of on) {
      const here = meet(box, now);
      const isHere = here[2] - here[0] > ROUNDING && here[3] - here[1] > ROUNDING;
      if (isHere && isOnTop(holder, here)) seen.push({ text, holder, box: here });
    }
  }

  // From the top down, so that each is held to those beside it alone.
  seen.sort((a, b) => a.box[1] - b.box[1]);
  seen.forEach(({ text, holder, box: [l, t, r, b] }, n) => {
    for (let next = n + 1; next < seen.length; next++) {
      const other = seen[next];
      if (!other || other.box[1] >= b - ROUNDING) break;
      if (other.holder === holder) continue;
      const across = Math.min(r, other.box[2]) - Math.max(l, other.box[0]);
      const down = Math.min(b, other.box[3]) - Math.max(t, other.box[1]);
      if (across > ROUNDING && down > ROUNDING) {
        faults.push(`one over the other in ${partOf(holder)}: ${text} / ${other.text}`);
      }
    }
  });

  for (const chosen of places.filter((place) => place.matches('[aria-selected="true"]'))) {
    const [l, t, r, b] = boxOf(chosen.getBoundingClientRect());
    const { now } = edgesOf(chosen);
    const isThere = l >= now[0] - ROUNDING && r <= now[2] + ROUNDING && t < now[3] && b > now[1];
    if (!isThere) faults.push(`chosen, and out of sight: ${chosen.textContent?.trim()}`);
  }

  const scrolled = [...new Set([document.scrollingElement, ...places.flatMap(roundIt)])].map(
    (each) => ({ each, top: each?.scrollTop ?? 0, left: each?.scrollLeft ?? 0 }),
  );
  for (const place of places) {
    if (!edgesOf(place).isSeen) continue;
    const at = place.getBoundingClientRect();
    if (at.width === 0 || at.height === 0) continue;
    const name = (place.getAttribute('aria-label') ?? place.textContent ?? '').trim().slice(0, 60);
    const { box: edges } = edgesOf(place);
    const [x, y] = [(at.left + at.right) / 2, (at.top + at.bottom) / 2];
    if (x < edges[0] || x > edges[2] || y < edges[1] || y > edges[3]) {
      faults.push(`out of reach in ${partOf(place)}: ${name}`);
      continue;
    }
    place.scrollIntoView({ block: 'center', inline: 'center' });
    if (!isOnTop(place, boxOf(place.getBoundingClientRect()))) {
      faults.push(`under something else in ${partOf(place)}: ${name}`);
    }
  }
  for (const { each, top, left } of scrolled) {
    if (each && (each.scrollTop !== top || each.scrollLeft !== left)) each.scrollTo(left, top);
  }
  return [...new Set(faults)];
}

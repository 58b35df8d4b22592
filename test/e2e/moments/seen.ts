/** A word or sentence as it stands on the glass. */
export type SeenText = {
  readonly text: string;
  /** The element that holds it, with its classes, and the parts round it from the inside out. */
  readonly element: string;
  readonly parts: readonly string[];
  /** Height of its capitals at the reader's eye. */
  readonly arcmin: number;
  /** Left, top, right, bottom of its letters in CSS pixels. */
  readonly box: readonly [number, number, number, number];
  /** Some of it is behind an edge, or taken by dots there. */
  readonly isCut: boolean;
  /** Underlined heavily: the one thing to mind. */
  readonly isMinded: boolean;
  /** The line of work, the dish or the rack that it is of, each with its number; else empty. */
  readonly line: string;
};

export type SeenWall = {
  readonly texts: readonly SeenText[];
  readonly overlaps: readonly (readonly [string, string])[];
  /** What is drawn in brick: needs a hand now, or is now. */
  readonly bricks: readonly string[];
};

/**
 * Reads a wall as whoever stands before it: every word that is on the glass. Runs in the page, so
 * all it needs is in it. `capital`: height of a capital over the letters' size.
 */
export function lookAt(capital: number): SeenWall {
  type Box = [number, number, number, number];
  const style = getComputedStyle(document.documentElement);
  const arcminPx = Number.parseFloat(style.getPropertyValue('--arcmin'));
  const brick = style.getPropertyValue('--brick').trim();
  const probe = document.body.appendChild(document.createElement('i'));
  probe.style.color = brick;
  const brickColor = getComputedStyle(probe).color;
  probe.remove();

  const above = (node: Node): Element | null => {
    const slot = node instanceof Element || node instanceof Text ? node.assignedSlot : null;
    if (slot) return slot;
    const { parentNode } = node;
    if (parentNode instanceof ShadowRoot) return parentNode.host;
    return parentNode instanceof Element ? parentNode : null;
  };
  const meet = (a: Box, b: Box): Box => [
    Math.max(a[0], b[0]),
    Math.max(a[1], b[1]),
    Math.min(a[2], b[2]),
    Math.min(a[3], b[3]),
  ];
  const boxOf = ({ left, top, right, bottom }: DOMRect): Box => [left, top, right, bottom];

  const heavyPx = 0.9 * Math.max(3, 3.4 * arcminPx);
  const lines: Element[] = [];

  const texts: (SeenText & { holder: Element })[] = [];
  const bricks: string[] = [];

  const lineOf = (holder: Element): string => {
    let each: Element | null = holder;
    while (each && !each.matches('now-line, pass-line, rack-lane')) each = above(each);
    if (!each) return '';
    if (!lines.includes(each)) lines.push(each);
    return `${each.localName} ${lines.indexOf(each)}`;
  };

  /** What clips it; null where it is not to be seen at all. */
  const clipOf = (holder: Element): Box | null => {
    let clip: Box = [0, 0, innerWidth, Math.max(innerHeight, document.body.scrollHeight)];
    for (let each: Element | null = holder; each; each = above(each)) {
      const { overflowX, overflowY, visibility, display } = getComputedStyle(each);
      if (visibility === 'hidden' || display === 'none' || each.matches('.unseen')) return null;
      if (each === document.body || each === document.documentElement) continue;
      if (overflowX === 'visible' && overflowY === 'visible') continue;
      clip = meet(clip, boxOf(each.getBoundingClientRect()));
    }
    return clip;
  };

  const read = (node: Text, parts: readonly string[]): void => {
    const text = node.data.replace(/\s+/g, ' ').trim();
    const holder = above(node);
    if (text === '' || !holder) return;
    const range = document.createRange();
    range.selectNodeContents(node);
    const rects = [...range.getClientRects()].filter(({ width }) => width > 0);
    const clip = clipOf(holder);
    if (rects.length === 0 || !clip) return;
    const sizePx = Number.parseFloat(getComputedStyle(holder).fontSize);
    // Letters fill the middle of their line; what is over and under them may be cut.
    const letters = rects.map((rect): Box => {
      const [left, top, right, bottom] = boxOf(rect);
      const middle = (top + bottom) / 2;
      return [left, middle - sizePx * 0.36, right, middle + sizePx * 0.3];
    });
    const parted = letters.map((box) => meet(box, clip));
    const isOn = parted.map(([l, t, r, b]) => r - l > 1 && b - t > 1);
    if (!isOn.some(Boolean)) return;
    const isWhole = letters.every((box, i) =>
      box.every(
        (edge, side) => Math.abs(edge - (parted[i]?.[side] ?? 0)) <= Math.max(1.5, 0.04 * sizePx),
      ),
    );
    const element = `${holder.localName}${holder.className ? `.${holder.className}` : ''}`;
    const arcmin = (sizePx * capital) / arcminPx;
    const drawn = getComputedStyle(holder);
    // A thin line under a name is a place to tap; under what is said at the pass it minds it.
    const isMinded =
      (drawn.borderBottomStyle === 'solid' &&
        Number.parseFloat(drawn.borderBottomWidth) >= heavyPx) ||
      (drawn.textDecorationLine === 'underline' && holder.matches('.mind'));
    letters.forEach((_, i) => {
      const part = parted[i];
      if (isOn[i] && part) {
        texts.push({
          text,
          element,
          parts,
          arcmin,
          box: part,
          isCut: !isWhole,
          isMinded,
          line: lineOf(holder),
          holder,
        });
      }
    });
  };

  const walk = (node: Node, parts: readonly string[]): void => {
    if (node instanceof Text) read(node, parts);
    if (!(node instanceof Element) && !(node instanceof ShadowRoot)) return;
    const inside =
      node instanceof Element && node.shadowRoot
        ? [`${node.localName}${node.hasAttribute('due') ? '[due]' : ''}`, ...parts]
        : parts;
    if (node instanceof HTMLElement && clipOf(node)) {
      const { backgroundColor, borderLeftColor, borderLeftWidth } = getComputedStyle(node);
      const { width, height } = node.getBoundingClientRect();
      const isBar = borderLeftColor === brickColor && borderLeftWidth !== '0px';
      if (width * height > 0 && (backgroundColor === brickColor || isBar)) {
        bricks.push(`${node.localName}.${node.className} in ${inside[0] ?? ''}`);
      }
    }
    const root = node instanceof Element ? (node.shadowRoot ?? node) : node;
    for (const child of root.childNodes) walk(child, inside);
    // What a page puts into a part's slot stands in the part's own children.
    if (node instanceof Element && node.shadowRoot) {
      for (const child of node.childNodes) walk(child, parts);
    }
  };
  walk(document.body, []);

  /** Whether a finger at its middle would touch it: else something opaque lies over it. */
  const isOnTop = ({ box: [l, t, r, b], holder }: (typeof texts)[number]): boolean => {
    let at = document.elementFromPoint((l + r) / 2, (t + b) / 2);
    while (at?.shadowRoot) {
      const deeper = at.shadowRoot.elementFromPoint((l + r) / 2, (t + b) / 2);
      if (!deeper || deeper === at) break;
      at = deeper;
    }
    const round = new Set<Element>();
    for (let each: Element | null = holder; each; each = above(each)) round.add(each);
    // A place to tap may lie over what it is for, as long as that shows through.
    for (let each: Element | null = at; each && !round.has(each); each = above(each)) {
      if (getComputedStyle(each).backgroundColor !== 'rgba(0, 0, 0, 0)') return false;
    }
    return true;
  };

  const onTop = texts.filter(isOnTop);
  const overlaps = onTop.flatMap((a, i) =>
    onTop.slice(i + 1).flatMap((b) => {
      const [l, t, r, bottom] = meet([...a.box] as Box, [...b.box] as Box);
      const does = a.holder !== b.holder && r - l > 2 && bottom - t > 2;
      return does ? [[a.text, b.text] as const] : [];
    }),
  );
  return { texts: onTop.map(({ holder: _, ...text }) => text), overlaps, bricks };
}

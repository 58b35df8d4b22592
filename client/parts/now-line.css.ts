import { css } from 'lit';

export const nowLineStyles = css`
  :host {
    /* Two places to tap stand beside each other there, also for large fingers on a small glass. */
    --place: max(calc(172px * var(--arcmin)), calc(2 * var(--touch) + 8px + var(--line)));
    display: grid;
    grid-template-columns:
      calc(14px * var(--arcmin)) calc(190px * var(--arcmin)) minmax(0, 1fr)
      auto;
    grid-template-rows: minmax(0, 1fr) auto;
    position: relative;
    min-height: 0;
    border-bottom: var(--line) solid var(--ink);
  }
  .bar {
    grid-row: 1 / 3;
  }
  :host([due]) .bar {
    background: var(--brick);
  }
  .side {
    grid-row: 1 / 3;
    display: flex;
    flex-direction: column;
    align-items: flex-start;
    justify-content: center;
    padding: 0 0 calc(10px * var(--arcmin)) calc(12px * var(--arcmin));
    line-height: 1.12;
    min-width: 0;
    white-space: nowrap;
  }
  .who {
    font-size: var(--strong);
    font-weight: 800;
    max-width: 100%;
    overflow: hidden;
    text-overflow: ellipsis;
    text-decoration: underline;
    text-decoration-thickness: var(--line);
    text-underline-offset: 0.14em;
  }
  .when {
    font-size: var(--strong);
    font-weight: 700;
  }
  /* By when: read from the floor, too. "fin ≈ 12:04" has room beside what is to be done. */
  .under {
    font-size: var(--body);
    font-weight: 700;
    white-space: normal;
  }
  :host([height='low']) :is(.who, .when) {
    font-size: var(--body);
  }
  .what {
    container-type: size;
    /* What the title is laid out over; else it would take the taps of the whole line. */
    position: relative;
    grid-row: 1;
    min-width: 0;
    overflow: hidden;
    /* Room for the ruled minutes, also where they are not drawn yet: titles keep one size. */
    margin: calc(4px * var(--arcmin)) calc(12px * var(--arcmin)) calc(16px * var(--arcmin)) 0;
  }
  :host([height='low']) .what {
    margin-top: calc(2px * var(--arcmin));
    margin-bottom: calc(10px * var(--arcmin));
  }
  :host([height='low']) ruled-line {
    height: calc(9px * var(--arcmin));
  }
  .page {
    --row-size: var(--body);
    height: 100%;
    display: flex;
    /* A row that has no room leaves whole, into a column that is not seen. */
    flex-flow: column wrap;
    align-content: flex-start;
    justify-content: center;
  }
  .page > * {
    width: 100%;
    flex: none;
  }
  /* What somebody opened, or is to read, stays; where both have no room the title leaves. */
  .page:has(> line-strip) {
    flex-direction: column-reverse;
  }
  .page > line-strip {
    order: -1;
    max-height: 100%;
    overflow: auto;
  }
  h2 {
    --row: calc(1.28 * var(--row-size));
    font-weight: 800;
    line-height: 1.04;
    letter-spacing: -0.01em;
    font-size: clamp(
      var(--strong),
      min((100cqh - var(--rows) * var(--row)) / 1.08, 100cqw / (var(--chars) * 0.52)),
      var(--highest)
    );
  }
  .title {
    width: 100%;
    text-align: start;
    font: inherit;
    letter-spacing: inherit;
    line-height: inherit;
  }
  /* As high as its letters, so that the rows have the rest: a finger finds it all over them. */
  :host(:not([narrow])) .title {
    min-height: 0;
  }
  :host(:not([narrow])) .title::before {
    content: '';
    position: absolute;
    inset: 0;
  }
  :is(tally-strokes, .weigh, cure-line, line-strip) {
    position: relative;
  }
  :host([height='low']) .page {
    --row-size: var(--small);
  }
  :host([height='high']) .page {
    --row-size: var(--strong);
  }
  :host([height='high']) .caution {
    font-size: var(--body);
  }
  .row {
    font-size: var(--row-size);
    font-weight: 700;
    line-height: 1.28;
    display: flex;
    align-items: center;
    column-gap: 0.7em;
  }
  /* Underlined word for word, also where it takes two lines. */
  .row:has(> :is(.mind, .asked)) {
    display: block;
  }
  /* What presses, and the standard behind it or under it; in half of a foot behind it or not. */
  .row.both {
    display: flex;
    flex-wrap: wrap;
  }
  .row.both.one {
    height: 1.28em;
    overflow: hidden;
  }
  /* Hands are changed before all else: the rest stands under it, small where a line has no room. */
  .page:has(> .hands) > :not(h2, cure-line, .hands) {
    order: 1;
  }
  :host(:not([height='high'])) .page:has(> .hands) > .row:not(.hands) {
    font-size: var(--small);
  }
  .mind {
    border-bottom: var(--heavy) solid var(--ink);
    line-height: 1.1;
  }
  .asked {
    font-weight: 800;
    border-bottom: var(--heavy) solid var(--brick);
    line-height: 1.1;
  }
  .caution {
    font-size: var(--small);
    font-weight: 600;
    line-height: 1.3;
  }
  tally-strokes,
  .weigh {
    flex: none;
    margin: calc((1.28em - var(--touch)) / 2) 0;
  }
  .weigh {
    font-size: var(--small);
    text-align: center;
    text-decoration: underline;
    text-decoration-thickness: var(--line);
    text-underline-offset: 0.14em;
  }
  .place {
    grid-column: 4;
    grid-row: 1 / 3;
    width: var(--place);
    border-left: var(--line) solid var(--ink);
    display: grid;
    grid-template-rows: minmax(0, 1fr) auto;
    min-height: 0;
    container-type: inline-size;
  }
  .waits {
    align-self: center;
    justify-self: center;
    font-size: var(--body);
    font-weight: 700;
  }
  .acts {
    display: flex;
    gap: 8px;
    justify-content: space-evenly;
  }
  .acts button {
    flex: 1 1 auto;
    text-align: center;
    font-size: var(--small);
    font-weight: 700;
    line-height: 1;
    padding: 0 4px;
  }
  ruled-line {
    position: absolute;
    left: 0;
    right: var(--place);
    bottom: calc(-1 * var(--line));
  }
`;

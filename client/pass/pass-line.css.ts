import { css } from 'lit';

export const passLineStyles = css`
  :host {
    position: relative;
    display: grid;
    grid-template-columns: minmax(0, 1.2fr) minmax(5em, max-content) minmax(0, 1fr) auto;
    align-items: center;
    align-content: center;
    --boxes-row: 1 / span 2;
    column-gap: calc(14px * var(--arcmin));
    padding: 0 0 0 var(--edge);
    border-bottom: var(--hair) solid var(--pencil);
    min-height: calc(var(--touch) + 8px);
    line-height: 1.1;
  }
  .bar {
    position: absolute;
    inset: 0 auto 0 0;
    width: calc(10px * var(--arcmin));
    background: var(--brick);
  }
  /* A name takes a second line before it is cut off; what is in it stays whole in any case. */
  h2 {
    display: flex;
    align-items: baseline;
    column-gap: 0.25em;
    font-weight: 800;
    overflow: hidden;
    white-space: nowrap;
  }
  .name {
    min-width: 0;
    white-space: normal;
  }
  h2 small {
    flex: none;
  }
  small {
    font-size: var(--small);
    font-weight: 700;
  }
  .pans {
    grid-area: 2 / 1 / 3 / 3;
  }
  /* What is in the pans has one row in any case, and a second where the lines may be as high. */
  .pans p {
    display: flex;
    flex-wrap: wrap;
    column-gap: 0.8em;
    max-height: calc(var(--pans-rows, 2) * 1.15em);
    line-height: 1.15;
    overflow: hidden;
  }
  /* How many are sold leaves whole, into a line that is not seen, where it has no room. */
  .outcome {
    display: grid;
    grid-template-columns: auto minmax(0, 1fr);
    column-gap: 0.5em;
    min-height: 1.15em;
  }
  .counted {
    display: flex;
    flex-wrap: wrap;
    height: 1.15em;
    overflow: hidden;
    white-space: nowrap;
  }
  .counted::before {
    content: '';
    height: 1.15em;
  }
  .then {
    grid-area: 1 / 3 / 3 / 4;
  }
  /* What is said alone stands beside the name, not on a row lower. */
  .then.one {
    grid-row: 1;
  }
  .held {
    font-weight: 800;
  }
  p {
    font-size: var(--small);
    font-weight: 600;
    text-wrap: balance;
  }
  .ready {
    line-height: 0.86;
    text-align: right;
    white-space: nowrap;
  }
  b {
    font-size: var(--figure);
    font-weight: 800;
  }
  .heavy {
    font-weight: 800;
  }
  .mind {
    font-weight: 800;
    text-decoration: underline;
    text-decoration-thickness: var(--line);
    text-underline-offset: 0.15em;
  }
  .soft {
    color: var(--soft);
  }
  :host([narrow]) {
    grid-template-columns: minmax(0, 1fr) auto;
    padding-right: var(--edge);
  }
  :host([narrow]) :is(.pans, .then) {
    grid-area: auto / 1 / auto / -1;
  }
  :host([narrow]) {
    --boxes-row: auto;
  }
  :host([narrow]) .pans p {
    max-height: none;
  }
  :host([narrow]) .outcome {
    display: flex;
    flex-wrap: wrap;
  }
  :host([narrow]) h2,
  :host([fit='long']) h2 {
    flex-wrap: wrap;
    white-space: normal;
    overflow: visible;
  }
  :host([lean]:not([narrow])) .name {
    font-size: var(--small);
  }
  /* In letters so large no name has room beside a figure. */
  @media (width < 16em) {
    :host([narrow]) :is(h2, .ready) {
      grid-column: 1 / -1;
      text-align: left;
    }
  }
  /* Two columns of dishes: how many are ready over that word, the rest in small under the name. */
  :host([short]) {
    grid-template-columns: minmax(0, 1fr) auto auto;
    grid-template-rows: auto minmax(var(--small), 1fr);
    align-items: center;
    column-gap: calc(9px * var(--arcmin));
    /* Three rows are no higher than a place to tap. */
    padding-block: 0;
    line-height: 1;
    --boxes-row: 1 / span 2;
  }
  /* Its letters reach below so low a line. */
  :host([short]) h2 {
    overflow: clip visible;
  }
  :host([short]) .ready {
    grid-area: 1 / 2 / 3 / 3;
    font-size: var(--small);
    line-height: 1;
  }
  /* Figures have nothing below their line: the least row has room for them and the word. */
  :host([short]) b {
    display: block;
    line-height: 0.76;
  }
  /* The first of it has the lines it needs; the rest is shown whole or not at all. */
  :host([short]) .then {
    grid-area: 2 / 1 / 3 / 2;
    align-self: stretch;
    display: grid;
    font-size: var(--small);
    line-height: 1;
  }
  :host([short]) .then::before {
    content: attr(data-first);
    grid-area: 1 / 1;
    visibility: hidden;
    font-weight: 800;
  }
  :host([short]) .rows {
    grid-area: 1 / 1;
    contain: size;
    display: flex;
    flex-flow: column wrap;
    align-content: flex-start;
    overflow: hidden;
  }
  :host([short]) .rows > * {
    width: 100%;
    flex: none;
  }
`;

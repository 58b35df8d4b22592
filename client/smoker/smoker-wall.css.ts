import { css } from 'lit';

export const smokerWallStyles = css`
  :host {
    position: relative;
    --rack-least: calc(0.8 * var(--touch));
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    grid-template-rows: auto auto minmax(0, 1fr) auto auto;
    height: 100dvh;
    overflow: hidden;
    background: var(--ground);
  }
  .smokers {
    display: grid;
    grid-auto-columns: minmax(0, 1fr);
    grid-auto-flow: column;
    min-height: 0;
  }
  smoker-cutaway + smoker-cutaway {
    border-left: var(--line) solid var(--ink);
  }
  .foot {
    border-top: var(--heavy) solid var(--ink);
    /* The same whatever stands in it, so that no rack moves under a finger. */
    height: max(calc(132px * var(--arcmin)), calc(2 * var(--touch) + 3 * var(--gap)));
    display: grid;
    grid-template: minmax(0, 1fr) auto / minmax(0, 1fr);
    overflow: hidden;
  }
  .foot.asks > check-band:not([over]),
  .foot > check-band[hidden] {
    display: none;
  }
  .foot > check-band:not([over], [hidden]) {
    border-top: var(--line) solid var(--ink);
  }
  .work {
    display: grid;
    grid-auto-rows: minmax(0, 1fr);
    min-height: 0;
  }
  .work now-line {
    border-bottom: none;
  }
  /* By when in a longer language, on one line: a foot has no room for four. */
  :host(:not([narrow])) .work now-line:not([brief]) {
    grid-template-columns:
      calc(14px * var(--arcmin)) minmax(calc(190px * var(--arcmin)), auto) minmax(0, 1fr)
      auto;
  }
  .work now-line + now-line {
    border-top: var(--line) solid var(--ink);
  }
  /* What is opened in a line has the foot, until it is closed or closes by itself. */
  :host(:not([narrow])) .work:has([opened]) > :not([opened]),
  :host(:not([narrow])) .work:has([opened]) + check-band:not([over]) {
    display: none;
  }
  :host(:not([narrow])) .work [opened]::part(beside) {
    display: none;
  }
  :host(:not([narrow])) .work [opened]::part(what) {
    grid-column: 2 / 4;
    margin-left: calc(12px * var(--arcmin));
  }
  .quiet {
    align-self: center;
    padding: 0 var(--edge);
    font-weight: 700;
  }
  /* Over the work that it comes before. */
  .call {
    align-self: stretch;
    align-content: center;
    padding-left: calc(var(--edge) - 2 * var(--heavy));
    border-left: calc(2 * var(--heavy)) solid var(--brick);
    font-size: var(--strong);
    font-weight: 800;
    line-height: 1.1;
  }
  .call + now-line {
    border-top: var(--line) solid var(--ink);
  }
  key-pad,
  .back {
    padding: calc(6px * var(--arcmin)) var(--edge);
  }
  .back,
  .back choice-strip {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: var(--gap);
    font-size: var(--small);
  }
  /* Beside the boxes: the foot is two boxes high. */
  .back choice-strip {
    display: contents;
  }
  .back p {
    font-size: var(--body);
    font-weight: 800;
  }
  then-foot {
    min-height: calc(34px * var(--arcmin));
    border-top: var(--line) solid var(--ink);
  }
  :host([narrow]) {
    height: auto;
    min-height: 100dvh;
    overflow: visible;
    grid-template-rows: auto;
    grid-auto-rows: auto;
  }
  :host([narrow]) .smokers {
    grid-auto-flow: row;
  }
  :host([narrow]) .work {
    grid-auto-rows: auto;
  }
  :host([narrow]) smoker-cutaway + smoker-cutaway {
    border-left: none;
    border-top: var(--heavy) solid var(--ink);
  }
  /* Only what is asked of a rack stays in sight of it, and hides no more than half of the glass. */
  :host([narrow]) .foot {
    height: auto;
    grid-template-rows: auto;
  }
  :host([narrow]) .foot.asks {
    position: sticky;
    bottom: 0;
    max-height: 55dvh;
    overflow: auto;
    background: var(--ground);
  }
`;

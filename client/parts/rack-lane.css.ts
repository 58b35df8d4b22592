import { css } from 'lit';

export const rackLaneStyles = css`
  :host {
    display: grid;
    grid-template-columns: calc(24px * var(--arcmin)) minmax(0, 1fr);
    grid-template-rows: minmax(0, 1fr);
    min-height: var(--rack-least, var(--touch));
    position: relative;
  }
  .label {
    font-size: var(--small);
    font-weight: 800;
    align-self: center;
  }
  .low {
    align-self: end;
    line-height: 1.1;
    padding-bottom: calc(var(--heavy) + var(--rack-gap, calc(3px * var(--arcmin))));
  }
  /* What lies on it is tapped there. */
  .lane:not(.empty) {
    min-height: var(--touch);
  }
  .lane {
    container: lane / inline-size;
    position: relative;
    padding-bottom: var(--rack-gap, calc(3px * var(--arcmin)));
    display: flex;
    flex-direction: column;
    justify-content: flex-end;
    min-width: 0;
    min-height: 0;
  }
  /* Words have their room first, then the hours, then what lies there, the rest is the curves'. */
  .pieces {
    flex: 1000 1 0;
    min-height: 0;
    max-height: var(--natural);
  }
  .drawn {
    container: drawn / size;
    height: 100%;
    font-size: calc(10px * var(--arcmin));
  }
  /* So low it could not be told from a stroke. */
  @container drawn (max-height: 0.8em) {
    .drawn > svg {
      display: none;
    }
  }
  .none > .pieces {
    min-height: 0;
  }
  .kind {
    display: contents;
  }
  .hours {
    container: hours / size;
    flex: 1000000 1 0;
    min-height: 0;
    max-height: 1.2em;
    font-size: calc(10px * var(--arcmin));
  }
  .words {
    font-size: var(--small);
    font-weight: 700;
    line-height: 1.1;
    display: flex;
    flex-wrap: wrap;
    justify-content: space-between;
    flex: none;
    column-gap: 0.6em;
  }
  .what,
  .next {
    display: flex;
    flex-wrap: wrap;
    column-gap: 0.5em;
    min-width: 0;
  }
  .what > :first-child {
    font-weight: 800;
  }
  .next {
    column-gap: 0.3em;
  }
  .when {
    white-space: pre;
  }
  .core:empty {
    display: none;
  }
  .to-come,
  .spare {
    color: var(--soft);
    font-weight: 600;
  }
  .bare {
    border-top: var(--heavy) solid var(--ink);
  }
  /* A narrow lane says what is there and what it is wanted for; a tap tells the rest. */
  @container lane (max-width: 24em) {
    .spare,
    .half {
      display: none;
    }
  }
  /* Over the hours of its rule, where there is room to read it. */
  .curve {
    container: curve / size;
    flex: 1 1 0;
    min-height: 0;
    max-height: 8em;
    font-size: var(--small);
  }
  cook-fan {
    height: 100%;
  }
  @container curve (max-height: 3.4em) {
    cook-fan {
      display: none;
    }
  }
  :host([narrow]) .pieces {
    flex: none;
    height: var(--natural);
  }
  :host([narrow]) .hours {
    flex: none;
    height: 1.2em;
  }
  :host([narrow]) .curve {
    flex: none;
    height: 4.6em;
  }
  svg {
    display: block;
    width: 100%;
    height: 100%;
    min-height: 0;
    overflow: visible;
    fill: none;
    stroke: var(--ink);
  }
  .outline {
    fill: var(--ground);
    stroke-width: var(--line);
    vector-effect: non-scaling-stroke;
    stroke-linejoin: round;
  }
  .detail {
    stroke-width: max(1px, calc(var(--line) * 0.55));
    vector-effect: non-scaling-stroke;
    stroke-linecap: round;
  }
  .shelf {
    stroke-width: var(--heavy);
    vector-effect: non-scaling-stroke;
  }
  .behind {
    opacity: 0.55;
  }
  .ghost .outline {
    stroke: var(--pencil);
    stroke-dasharray: 10 7;
  }
  .ghost .front .outline {
    fill: url(#hatch);
  }
  .ghost .detail {
    display: none;
  }
  .picked .outline {
    stroke-width: calc(var(--heavy) * 1.2);
  }
  .here .outline {
    stroke-dasharray: 2 5;
  }
  range-rule {
    margin-top: calc(2px * var(--arcmin));
    height: calc(10px * var(--arcmin));
  }
  @container hours (max-height: 1.1em) {
    range-rule {
      display: none;
    }
  }
  /* Over all that is drawn and said there. */
  button {
    position: absolute;
    z-index: 1;
    top: 0;
    bottom: 0;
    min-width: 0;
    min-height: 0;
    touch-action: none;
  }
  button[aria-pressed='true'] {
    outline: var(--line) solid var(--ink);
    outline-offset: calc(2px * var(--arcmin));
  }
  .goal {
    left: calc(-5px * var(--arcmin));
    right: calc(-5px * var(--arcmin));
    border: var(--line) dashed var(--ink);
  }
  .goal.asked {
    border: var(--heavy) solid var(--ink);
  }
`;

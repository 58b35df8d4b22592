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
  .lane {
    container: lane / inline-size;
    position: relative;
    padding-bottom: calc(2px * var(--arcmin));
    display: grid;
    grid-template-rows: auto minmax(0, 1fr) auto;
    min-width: 0;
  }
  .words {
    font-size: var(--small);
    font-weight: 700;
    line-height: 1.1;
    display: flex;
    justify-content: space-between;
    gap: 0.5em;
    white-space: nowrap;
    overflow: hidden;
  }
  .words > :first-child {
    font-weight: 800;
    flex: 0 1 auto;
    min-width: 0;
    overflow: hidden;
    text-overflow: ellipsis;
  }
  /* How many is always there; of what, and what comes then, where there is room for it. */
  .here-now {
    display: flex;
    flex-wrap: wrap;
    column-gap: 0.35em;
    height: 1.1em;
  }
  .counts {
    display: flex;
    min-width: 0;
  }
  .figure {
    flex: none;
    white-space: pre;
  }
  /* A name leaves whole, into a line that is not seen. */
  .name {
    flex: 0 1 auto;
    min-width: 0;
    display: flex;
    flex-wrap: wrap;
    height: 1.1em;
    margin-inline: 0.3em;
    overflow: hidden;
  }
  /* Of two kinds both names leave: what one of them kept would stand as a gap between figures. */
  .counts:has(> :nth-child(3)) > .name {
    max-width: clamp(0px, (100cqi - var(--letters) * 0.55em) * 1000, 100%);
  }
  .name > i {
    height: 1.1em;
  }
  .counts > :last-child {
    margin-right: 0;
  }
  /* When is what counts: there is what for only where both have room. */
  .next {
    display: flex;
    flex-flow: row-reverse wrap;
    justify-content: flex-start;
    flex: 1 0 calc(var(--letters) * 0.512em);
    height: 1.1em;
    column-gap: 0.3em;
    overflow: hidden;
  }
  .coming {
    color: var(--soft);
    font-weight: 600;
  }
  /* Till when it is free says no more than when that comes. */
  .to-come {
    flex-wrap: wrap;
    height: 1.1em;
  }
  /* On so narrow a lane, in letters so large, words take the lines that they need. */
  @container lane (max-width: 9em) {
    .words,
    .here-now,
    .counts,
    .name,
    .next,
    .to-come {
      flex-wrap: wrap;
      height: auto;
      white-space: normal;
    }
    .name > i {
      display: none;
    }
    .to-come > :last-child {
      display: none;
    }
  }
  svg {
    grid-row: 2;
    grid-column: 1;
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
  /* Beyond the end of the shelf: a whole lane leaves it this much of the lane. */
  cook-fan {
    grid-row: 2;
    grid-column: 1;
    justify-self: end;
    width: 27%;
    background: var(--ground);
  }
  range-rule {
    grid-row: 3;
    margin-top: calc(2px * var(--arcmin));
    height: calc(11px * var(--arcmin));
  }
  button {
    position: absolute;
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

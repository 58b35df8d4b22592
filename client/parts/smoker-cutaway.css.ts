import { css } from 'lit';

export const smokerCutawayStyles = css`
  :host {
    display: grid;
    grid-template-rows: auto minmax(0, 1fr) auto;
    padding: 0 var(--edge) calc(4px * var(--arcmin));
    min-height: 0;
    min-width: 0;
  }
  .title {
    width: 100%;
    display: flex;
    align-items: baseline;
    justify-content: space-between;
    flex-wrap: wrap;
    column-gap: 0.2em;
    min-height: max(44px, calc(32px * var(--arcmin)));
    line-height: 1.15;
    padding-bottom: calc(3px * var(--arcmin));
  }
  h2 {
    font-size: var(--body);
    letter-spacing: -0.02em;
    font-weight: 800;
    text-decoration: underline;
    text-decoration-thickness: var(--line);
    text-underline-offset: 0.14em;
  }
  /* Name and air on one line, how it is fired on the next: what is under it is for racks. */
  .then {
    flex-basis: 100%;
    height: 0;
  }
  .fire {
    font-size: var(--small);
    font-weight: 700;
    text-align: left;
  }
  .air {
    font-size: var(--small);
    font-weight: 800;
  }
  .ago {
    color: var(--soft);
    font-weight: 600;
  }
  .here {
    text-decoration: underline dashed;
    text-underline-offset: 0.2em;
  }
  .order {
    flex-basis: 100%;
    padding-bottom: 0.2em;
    font-size: var(--small);
    font-weight: 800;
    text-align: left;
  }
  .order.pressing {
    flex-basis: calc(100% + var(--edge));
    margin-left: calc(-1 * var(--edge));
    padding-left: calc(var(--edge) - 2 * var(--heavy));
    border-left: calc(2 * var(--heavy)) solid var(--brick);
  }
  .mind {
    border-bottom: var(--heavy) solid var(--ink);
    line-height: 1.1;
  }
  .racks {
    display: grid;
    grid-template-rows: var(--rows);
    align-content: start;
    min-height: 0;
    overflow: hidden auto;
  }
  /* Where racks are so full that no stretch of hours has room nothing is read by them. */
  :host([bare]) rule-hours {
    visibility: hidden;
  }
  .heat {
    display: flex;
    align-items: baseline;
    gap: 0.35em;
    font-size: var(--small);
    font-weight: 700;
  }
  .heat svg {
    height: 1em;
    width: 1em;
    align-self: center;
    fill: none;
    stroke: var(--ink);
    stroke-width: 16;
  }
  :host([narrow]) .racks {
    grid-template-rows: none;
  }
`;

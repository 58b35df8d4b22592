import { css } from 'lit';

export const checkPadStyle = css`
  :host {
    display: flex;
    flex-wrap: wrap;
    gap: var(--gap);
    align-items: center;
    padding: calc(6px * var(--arcmin)) var(--edge);
    font-size: var(--small);
  }
  .what {
    flex: 1 1 9.6em;
    line-height: 1.15;
  }
  .what b {
    display: block;
    font-size: var(--body);
    font-weight: 800;
  }
  output {
    display: block;
    width: fit-content;
    font-size: var(--figure);
    font-weight: 800;
    border-bottom: var(--heavy) solid var(--ink);
    white-space: nowrap;
    line-height: 1.1;
    min-width: 5ch;
  }
  .boxes {
    flex: 999 1 420px;
    display: flex;
    flex-wrap: wrap;
    gap: var(--gap);
    align-items: center;
  }
  /* Names go on in the row where the choices before them end: rows are dear on a wall. */
  .boxes choice-strip {
    display: contents;
  }
  .asks {
    font-weight: 800;
  }
  .wrong {
    font-weight: 800;
    border-bottom: var(--heavy) solid var(--brick);
  }
`;

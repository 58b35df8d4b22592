import { css } from 'lit';

/** A proposal is ruled as a list to be gone through with a finger. */
export const mendStyle = css`
  :host {
    display: block;
    padding: var(--gap) var(--edge) var(--edge);
  }
  h2,
  summary,
  .strong {
    font-weight: 800;
  }
  h2,
  summary {
    padding: var(--gap) 0 0.2em;
    border-bottom: var(--line) solid var(--ink);
  }
  summary {
    min-height: var(--touch);
    cursor: pointer;
  }
  p {
    padding: 0.2em 0;
  }
  .soft {
    color: var(--soft);
    font-size: var(--small);
  }
  .needs {
    max-width: 50em;
    font-size: var(--strong);
    font-weight: 800;
    line-height: 1.3;
  }
  .buttons {
    display: flex;
    flex-wrap: wrap;
    gap: var(--gap) 1em;
    padding: var(--gap) 0;
  }
  button {
    min-height: var(--touch);
  }
  button[disabled] {
    border-color: var(--pencil);
    color: var(--soft);
    cursor: default;
  }
  /* One row a line; its parts stand under those of the others. */
  .rows li {
    display: grid;
    grid-template-columns: minmax(0, 2fr) repeat(3, minmax(0, 1.2fr));
    gap: 0 1.2em;
    align-items: baseline;
    padding: 0.25em 0;
    border-bottom: var(--hair) solid var(--pencil);
    font-weight: 700;
  }
  .waits li {
    grid-template-columns: minmax(0, 2fr) minmax(0, 1fr) minmax(0, 1.5fr) minmax(0, 1.5fr);
  }
  .services li {
    grid-template-columns: minmax(0, 1.2fr) minmax(0, 1fr) 1.2em minmax(0, 1fr);
    max-width: 40em;
  }
  .what {
    font-weight: 600;
  }
  time-chart {
    height: clamp(20em, 75vh, 60em);
    border-bottom: var(--line) solid var(--ink);
  }
  @media (width < 62em) {
    .waits li,
    .changes li {
      grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
    }
    .what {
      grid-column: 1 / -1;
    }
    .changes span:empty {
      display: none;
    }
  }
`;

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
  .services {
    padding: 0.2em 0;
    font-weight: 700;
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
  .changes li {
    display: flex;
    flex-wrap: wrap;
    gap: 0 1.2em;
    padding: 0.25em 0;
    border-bottom: var(--hair) solid var(--pencil);
    font-weight: 700;
  }
  .what {
    flex: 1 1 16em;
    font-weight: 600;
  }
`;

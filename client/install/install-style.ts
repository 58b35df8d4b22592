import { css } from 'lit';

/** A page to be read at arm's length, with steps to be followed on another glass. */
export const installStyle = css`
  :host {
    display: block;
    max-width: 60em;
    padding: var(--edge);
    font-size: var(--body);
  }
  h1 {
    font-size: var(--strong);
    font-weight: 800;
    border-bottom: var(--heavy) solid var(--ink);
  }
  p,
  details {
    padding: 0.4em 0;
  }
  .print {
    font-size: var(--small);
    font-weight: 700;
    overflow-wrap: anywhere;
  }
  .box {
    display: inline-flex;
    align-items: center;
    min-height: var(--touch);
    padding: 0 0.6em;
    border: var(--heavy) solid var(--ink);
    color: var(--ink);
    font-weight: 800;
    text-decoration: none;
  }
  details {
    border-top: var(--hair) solid var(--pencil);
  }
  summary {
    display: flex;
    align-items: center;
    min-height: var(--touch);
    font-weight: 800;
    cursor: pointer;
  }
  ol {
    padding-left: 1.4em;
    list-style: decimal;
  }
  li {
    padding: 0.2em 0;
  }
  .codes {
    display: flex;
    flex-wrap: wrap;
    gap: var(--edge);
  }
  figure {
    flex: 1 1 9em;
    max-width: 13em;
    margin: 0;
  }
  figcaption {
    font-weight: 800;
  }
`;

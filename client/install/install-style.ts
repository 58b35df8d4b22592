import { css } from 'lit';

/** A page to be read at arm's length, with steps to be followed on another glass. */
export const installStyle = css`
  :host {
    display: block;
    padding: var(--gap) var(--edge) var(--edge);
    font-size: var(--body);
    line-height: 1.25;
  }
  h1 {
    font-size: var(--figure);
    font-weight: 800;
    line-height: 1.1;
  }
  main > p {
    max-width: 52em;
    padding: 0.6em 0;
  }
  main > ol {
    max-width: 52em;
    counter-reset: step;
    padding: 0.4em 0;
  }
  main > .long {
    columns: 2 26em;
    column-gap: calc(2 * var(--edge));
    max-width: none;
  }
  .step {
    position: relative;
    padding: 0.5em 0 0.6em 2em;
    counter-increment: step;
    border-bottom: var(--hair) solid var(--pencil);
    break-inside: avoid;
  }
  .step::before {
    content: counter(step);
    position: absolute;
    left: 0;
    font-size: var(--strong);
    font-weight: 800;
  }
  h2 {
    font-size: var(--strong);
    font-weight: 800;
    line-height: 1.15;
  }
  .print,
  code {
    display: block;
    padding: 0.3em 0;
    font-size: var(--small);
    font-weight: 700;
    overflow-wrap: anywhere;
  }
  code {
    font-family: monospace;
    font-size: var(--body);
  }
  .soft {
    font-size: var(--small);
    color: var(--soft);
  }
  .box {
    display: inline-flex;
    align-items: center;
    min-height: var(--touch);
    margin-top: 0.4em;
    padding: 0 0.8em;
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
    text-decoration: underline;
    text-underline-offset: 0.15em;
    cursor: pointer;
  }
  .how {
    padding: 0 0 0.6em 1.4em;
  }
  .how li {
    padding: 0.2em 0;
    list-style: decimal;
  }
  qr-code {
    width: 10em;
    padding-top: 0.4em;
  }
`;

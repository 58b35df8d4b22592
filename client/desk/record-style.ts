import { css } from 'lit';
import { formStyle } from './form-style.ts';

/** Ruled lists and forms, as all of the desk's section on the record has them. */
export const recordStyle = [
  formStyle,
  css`
    :host {
      display: block;
    }
    h2 {
      font-weight: 800;
      padding: 0.4em 0 0.2em;
      border-bottom: var(--line) solid var(--ink);
    }
    form,
    .row {
      display: flex;
      flex-wrap: wrap;
      align-items: center;
      gap: var(--gap) 1em;
      padding: var(--gap) 0;
    }
    /* What is written stands on its line, and so does what it is called by. */
    form label {
      align-items: baseline;
    }
    form :is(input, select) {
      padding: calc(var(--touch) - 1.7em) 0.1em 0;
    }
    /* The browser's own sign of a list would stay halfway up. */
    form select {
      appearance: none;
      padding-right: 1.2em;
      background:
        linear-gradient(45deg, transparent 50%, var(--ink) 50%) right 0.45em bottom 0.5em / 0.4em
          0.4em no-repeat,
        linear-gradient(-45deg, transparent 50%, var(--ink) 50%) right 0.05em bottom 0.5em / 0.4em
          0.4em no-repeat;
    }
    li,
    tr {
      border-bottom: var(--hair) solid var(--pencil);
    }
    li {
      display: flex;
      flex-wrap: wrap;
      align-items: center;
      gap: 0 1em;
      min-height: var(--touch);
      padding: 0.2em 0;
    }
    li > .name {
      flex: 1 1 12em;
      font-weight: 800;
    }
    table {
      width: 100%;
      border-collapse: collapse;
    }
    th,
    td {
      text-align: left;
      font-weight: 600;
      padding: 0.15em 0.6em 0.15em 0;
      vertical-align: top;
    }
    .figure {
      text-align: right;
      font-weight: 800;
      white-space: nowrap;
    }
    .wrong {
      font-weight: 800;
      border-bottom: var(--heavy) solid var(--brick);
    }
    .wrong a {
      display: inline-flex;
      align-items: center;
      min-height: var(--touch);
      padding: 0 0.6em;
      color: inherit;
    }
    .soft {
      color: var(--soft);
      font-size: var(--small);
    }
    .sum td {
      border-top: var(--line) solid var(--ink);
      font-weight: 800;
    }
    p {
      padding: 0.2em 0;
    }
  `,
];

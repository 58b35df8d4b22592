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
    /* What a field is called stands over it, so that fields and boxes stand on one line. */
    form,
    .row {
      align-items: end;
    }
    form label {
      display: grid;
      align-content: end;
      gap: 0;
    }
    .called {
      font-size: var(--small);
      color: var(--soft);
      font-weight: 600;
    }
    form label > :is(input:not([type='checkbox']), select) {
      min-width: 0;
      min-height: 2em;
      padding: 0 0.1em;
    }
    form select {
      appearance: none;
      padding-right: 1.2em;
      background:
        linear-gradient(45deg, transparent 50%, var(--ink) 50%) right 0.45em center / 0.4em 0.4em
          no-repeat,
        linear-gradient(-45deg, transparent 50%, var(--ink) 50%) right 0.05em center / 0.4em 0.4em
          no-repeat;
    }
    .fields {
      display: grid;
      grid-template-columns: repeat(auto-fill, minmax(8em, 1fr));
    }
    .fields :is(input, select) {
      width: 100%;
    }
    .fields > :first-child {
      grid-column: span 2;
    }
    .fields button {
      grid-column: -2 / -1;
      text-align: center;
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

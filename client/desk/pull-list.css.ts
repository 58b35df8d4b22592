import { css } from 'lit';

export const pullListStyles = css`
  :host {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(100%, 24em), 1fr));
    gap: 0 calc(2 * var(--edge));
    padding: 0 var(--edge) var(--edge);
  }
  h2 {
    font-weight: 800;
    padding-top: 0.5em;
  }
  table {
    width: 100%;
    border-collapse: collapse;
  }
  th {
    font-size: var(--small);
    font-weight: 600;
    color: var(--soft);
    text-align: right;
    vertical-align: bottom;
    border-bottom: var(--line) solid var(--ink);
  }
  tbody th {
    font-size: inherit;
    font-weight: 700;
    color: var(--ink);
    border-bottom: none;
    vertical-align: middle;
  }
  td {
    text-align: right;
    white-space: nowrap;
    padding-left: 0.8em;
  }
  th:first-child {
    text-align: left;
  }
  tr {
    border-bottom: var(--hair) solid var(--pencil);
    line-height: 1.5;
  }
  section {
    padding: 0.4em 0;
    border-bottom: var(--hair) solid var(--pencil);
  }
  section:first-of-type {
    border-top: var(--line) solid var(--ink);
  }
  h3 {
    display: flex;
    justify-content: space-between;
    font-weight: 700;
  }
  p {
    font-size: var(--small);
    font-weight: 600;
    color: var(--soft);
  }
  td button {
    min-width: 7em;
    max-width: 9em;
    padding: 0 0.5em;
    line-height: 1.1;
    white-space: normal;
    border: var(--line) solid var(--ink);
    font-weight: 700;
    text-align: center;
  }
  td:has(> button) {
    padding-block: calc(var(--gap) / 2);
  }
  .late th {
    border-left: var(--heavy) solid var(--brick);
    padding-left: 0.5em;
  }
  .late :is(time, .how) {
    font-weight: 800;
    color: var(--ink);
  }
  /* What is out asks for nothing: its words are as pale as words may be, its boxes thin. */
  .over th {
    padding-top: 1em;
    font-size: var(--small);
    font-weight: 600;
    color: var(--soft);
    border-bottom: var(--hair) solid var(--ink);
    text-align: right;
  }
  .over th:first-child {
    text-align: left;
    font-weight: 800;
  }
  .out :is(th, td, button) {
    color: var(--soft);
    font-weight: 600;
  }
  .out button {
    border-width: var(--hair);
  }
  .tapped {
    border-style: dashed;
  }
  .here {
    border-style: double;
    border-width: max(4px, var(--heavy));
  }
  .takes {
    border-width: var(--heavy);
    font-weight: 800;
  }
  .pad td {
    padding-left: 0;
    white-space: normal;
    text-align: left;
  }
  /* A name has a line of its own where there is no room beside its figures. */
  @media (width < 600px) {
    tr {
      display: grid;
      grid-template-columns: 1fr 1.4fr 1.9fr 2.2fr;
      align-items: center;
    }
    /* Said to who hears it; its rule is drawn by the others. */
    thead th:first-child {
      position: absolute;
      border: none;
    }
    .over th:first-child {
      grid-column: span 2;
    }
    tbody th,
    .pad td {
      grid-column: 1 / -1;
    }
    td {
      padding-left: 0.3em;
    }
    td button {
      min-width: 100%;
      padding: 0 0.2em;
    }
  }
`;

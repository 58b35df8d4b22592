import { css } from 'lit';

/** What is to be chosen in one column, the boxes that choose it in the other. */
export const startRows = css`
  :host {
    display: block;
  }
  section {
    display: grid;
    grid-template-columns: minmax(0, 14em) minmax(0, 1fr);
    align-items: center;
    gap: var(--gap);
    padding: var(--gap) 0;
    border-bottom: var(--hair) solid var(--pencil);
  }
  h3 {
    font-weight: 800;
  }
  .why {
    font-size: var(--small);
    color: var(--soft);
  }
  @media (width < 45em) {
    section {
      grid-template-columns: minmax(0, 1fr);
    }
  }
`;

/** The boxes that open a screen. */
export const screenListStyle = css`
  .boxes {
    display: flex;
    flex-wrap: wrap;
    gap: var(--gap);
  }
  a,
  button {
    display: flex;
    align-items: center;
    min-height: var(--touch);
    padding: 0 0.7em;
    border: var(--line) solid var(--ink);
    color: var(--ink);
    font-weight: 800;
    line-height: 1.1;
    overflow-wrap: anywhere;
    text-decoration: none;
  }
  a {
    font-size: var(--strong);
  }
  button {
    font-weight: 700;
  }
  button[aria-expanded='true'] {
    border-width: var(--heavy);
  }
  a:active {
    background: var(--light-hatch);
  }
  wall-chooser {
    grid-column: 2;
  }
  @media (width < 45em) {
    wall-chooser {
      grid-column: 1;
    }
  }
`;

import { css } from 'lit';

/** How lists of screens and people are ruled, in every part of the desk's section on who. */
export const whoStyle = css`
  :host {
    display: block;
    /* For a bare finger or a mouse, an arm's length off. */
    --touch: 44px;
  }
  h2 {
    font-size: var(--strong);
    font-weight: 800;
    border-bottom: var(--heavy) solid var(--ink);
    margin-top: var(--edge);
  }
  li,
  .row {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0 1em;
    min-height: var(--touch);
    padding: calc(var(--gap) / 2) 0;
    border-bottom: var(--hair) solid var(--pencil);
  }
  li > .name {
    flex: 0 1 10em;
    font-weight: 800;
  }
  .soft {
    color: var(--soft);
  }
  .scanned {
    border-left: var(--heavy) solid var(--ink);
    padding-left: var(--gap);
  }
  .code {
    font-size: var(--figure);
    font-weight: 800;
    letter-spacing: 0.06em;
  }
  form {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: var(--gap) 1em;
  }
  fieldset {
    display: contents;
  }
  input[type='checkbox'] {
    appearance: auto;
    width: 1.1em;
    height: 1.1em;
    accent-color: var(--ink);
  }
`;

import { css } from 'lit';

/** How a plan is ruled: a heavy line for each service, a thin one for each dish. */
export const planStyle = css`
  :host {
    display: block;
  }
  h2,
  legend {
    font-size: var(--strong);
    font-weight: 800;
  }
  fieldset {
    border: none;
    margin: 0;
    padding: 0;
    min-width: 0;
  }
  .service {
    border-bottom: var(--heavy) solid var(--ink);
    padding: var(--gap) 0;
  }
  .row {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0 1em;
    min-height: var(--touch);
    border-bottom: var(--hair) solid var(--pencil);
  }
  .row > .name {
    flex: 1 1 9em;
    font-weight: 800;
  }
  .deeper {
    padding-left: 1.6em;
  }
  .soft {
    color: var(--soft);
    font-size: var(--small);
  }
  input[type='number'] {
    width: 4.5em;
    text-align: right;
  }
  input[size] {
    width: auto;
  }
  select {
    max-width: 100%;
  }
  button[disabled] {
    border-color: var(--pencil);
    color: var(--soft);
    cursor: default;
  }
  .verdict {
    padding: var(--gap) 0;
    background: var(--ground);
    border-bottom: var(--line) solid var(--ink);
    font-weight: 700;
  }
  .buttons {
    display: flex;
    flex-wrap: wrap;
    gap: var(--gap) 1em;
    padding-bottom: var(--gap);
  }
  plan-verdict {
    position: sticky;
    top: 0;
    z-index: 1;
    display: block;
  }
  /* A browser's em: also where a reader has it write larger, little of the plan is left to see. */
  @media (height < 34em) {
    plan-verdict {
      position: static;
    }
  }
  .against {
    border-bottom: var(--heavy) solid var(--ink);
  }
  .against li {
    padding-left: 0.6em;
    border-left: var(--heavy) solid var(--ink);
    margin: 0.25em 0;
  }
`;

/** The editor itself, round its parts. */
export const editorStyle = css`
  :host {
    padding: 0 var(--edge) var(--edge);
  }
`;

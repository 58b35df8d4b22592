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
    padding: var(--gap) 0;
  }
  .heading {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0 1.2em;
    border-bottom: var(--heavy) solid var(--ink);
  }
  .heading .name {
    flex: 1 1 8em;
    max-width: 20em;
  }
  .heading .name input {
    width: 100%;
    font-size: var(--strong);
    font-weight: 800;
    background: none;
  }
  .soft {
    color: var(--soft);
    font-size: var(--small);
  }
  input[type='number'] {
    width: 3.4em;
    text-align: right;
  }
  select {
    max-width: 100%;
  }
  button[disabled] {
    border-color: var(--pencil);
    color: var(--soft);
    cursor: default;
  }
  .buttons {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: var(--gap) 1em;
    padding: var(--gap) 0;
  }
  .verdict {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0 1.6em;
    background: var(--ground);
    border-bottom: var(--line) solid var(--ink);
    font-weight: 700;
  }
  .verdict .buttons {
    align-self: start;
  }
  .verdict [role='status'] {
    flex: 1 1 18em;
    padding-bottom: 0.2em;
  }
  .found {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(20em, 100%), 1fr));
    gap: 0 1.6em;
  }
  summary {
    display: flex;
    align-items: center;
    min-height: var(--touch);
    cursor: pointer;
    text-decoration: underline;
    text-underline-offset: 0.2em;
  }
  plan-verdict {
    position: sticky;
    top: 0;
    z-index: 1;
    display: block;
  }
  /* A browser's em: also where a reader has it write larger, little of the plan is left to see. */
  @media (height < 40em), (width < 52em) {
    plan-verdict {
      position: static;
    }
    .heading {
      column-gap: 0.5em;
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
    /* What is only read aloud stays in here, and makes no page longer. */
    position: relative;
    padding: 0 var(--edge) var(--edge);
  }
`;

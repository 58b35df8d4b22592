import { css } from 'lit';

/** Fields to type in and boxes to press, as all of the desk has them. */
export const formStyle = css`
  label {
    display: inline-flex;
    align-items: center;
    gap: 0.4em;
    min-height: var(--touch);
  }
  input:not([type='checkbox']),
  select {
    min-height: var(--touch);
    border-bottom: var(--line) solid var(--ink);
    font-weight: 700;
    background: var(--ground);
  }
  button {
    border: var(--line) solid var(--ink);
    padding: 0 0.6em;
    font-weight: 700;
  }
  .takes {
    border-width: var(--heavy);
    font-weight: 800;
  }
  .leaves {
    border-style: dashed;
    font-weight: 600;
  }
`;

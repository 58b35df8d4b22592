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
    font-weight: 700;
    /* The line stands under the letters, wherever in its place to tap they are. */
    background: linear-gradient(var(--ink), var(--ink)) 0 calc(50% + 0.78em) / 100% var(--line)
      no-repeat;
  }
  option {
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

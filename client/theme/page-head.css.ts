import { css } from 'lit';

/** The head of a page that no wall is: what it is, and beside that its languages. */
export const pageHead = css`
  header {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    justify-content: space-between;
    gap: var(--gap) 1em;
    padding-bottom: var(--gap);
    border-bottom: var(--heavy) solid var(--ink);
  }
`;

import { css } from 'lit';

/** A dish as a row whose parts stand under those of every other; narrow, its ways go below. */
export const dishStyle = css`
  .dish {
    display: grid;
    grid-template-columns: 13em 9em 12em minmax(0, 1fr) 6.5em;
    grid-template-areas: 'name portions sells ways more';
    align-items: center;
    gap: 0 1em;
    padding: 0.2em 0;
    border-bottom: var(--hair) solid var(--pencil);
  }
  .name {
    grid-area: name;
    font-weight: 800;
  }
  .portions {
    grid-area: portions;
  }
  .sells {
    grid-area: sells;
    width: 100%;
  }
  .counted {
    grid-area: 1 / 2 / auto / span 2;
    font-size: var(--small);
  }
  .ways {
    grid-area: ways;
    line-height: 1.25;
  }
  .ways strong {
    font-weight: 800;
  }
  .more {
    grid-area: more;
    text-align: center;
  }
  .more[aria-expanded='true'] {
    border-bottom-width: var(--heavy);
  }
  .opened {
    padding: var(--gap) 0 var(--gap) 1.6em;
    border-bottom: var(--line) solid var(--ink);
  }
  @media (width < 88em) {
    .dish {
      grid-template-columns: minmax(0, 1fr) 8.5em 11em 6em;
      grid-template-areas:
        'name portions sells more'
        'ways portions sells more';
      gap: 0 0.8em;
    }
    .counted {
      grid-area: 1 / 2 / span 2 / span 2;
    }
    .name {
      align-self: end;
    }
    .ways {
      align-self: start;
      font-size: var(--small);
    }
  }
  @media (width < 52em) {
    .dish {
      grid-template-columns: max-content minmax(0, 1fr) auto;
      grid-template-areas:
        'name name more'
        'ways ways more'
        'portions sells sells';
    }
    .counted {
      grid-area: 3 / 1 / auto / span 3;
    }
    input[type='number'] {
      width: 2.4em;
    }
    .more {
      justify-self: end;
    }
    .opened {
      padding-left: 0.6em;
    }
  }
`;

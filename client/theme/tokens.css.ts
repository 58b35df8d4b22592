import type { CSSResult } from 'lit';
import { css, unsafeCSS } from 'lit';
import type { Inks } from './grounds.ts';
import { grounds } from './grounds.ts';

/** As the browser knows them. */
export const LETTERS = 'Atkinson Hyperlegible Next Variable';

/** Cap height of Atkinson Hyperlegible Next over its size, measured. */
export const CAP_HEIGHT = 0.672;

/**
 * Letters by what must be read from where, in minutes of arc of their capitals: nothing on a wall
 * is under 16, what must be read from the floor is 20 or more (NUREG-0700 §1.3.1-4; ISO 9241-303
 * gives the same figures), none so high that one glance cannot take in a word.
 */
export const LETTERS_ARCMIN = { small: 16, body: 20, strong: 24, figure: 30, highest: 56 } as const;

const size = (arcmin: number) =>
  unsafeCSS(`calc(${(arcmin / CAP_HEIGHT).toFixed(3)}px * var(--arcmin))`);

const inksOf = ({ ground, ink, soft, pencil, brick }: Inks) =>
  unsafeCSS(
    `--ground: ${ground}; --ink: ${ink}; --soft: ${soft}; --pencil: ${pencil}; --brick: ${brick};`,
  );

/**
 * For the document: `--arcmin` (CSS pixels, without unit) and `--touch` are set by the calibration.
 */
export const tokens: CSSResult = css`
  :root {
    ${inksOf(grounds.paper)}
    --arcmin: 1.76;
    --small: ${size(LETTERS_ARCMIN.small)};
    --body: ${size(LETTERS_ARCMIN.body)};
    --strong: ${size(LETTERS_ARCMIN.strong)};
    --figure: ${size(LETTERS_ARCMIN.figure)};
    --highest: ${size(LETTERS_ARCMIN.highest)};
    --touch: 60px;
    --gap: max(8px, calc(6px * var(--arcmin)));
    --edge: calc(22px * var(--arcmin));
    --hair: max(1px, calc(1px * var(--arcmin)));
    --line: max(2px, calc(1.8px * var(--arcmin)));
    --heavy: max(3px, calc(3.4px * var(--arcmin)));
    --hatch: repeating-linear-gradient(
      115deg,
      var(--ink) 0 calc(2.2px * var(--arcmin)),
      transparent 0 calc(7.4px * var(--arcmin))
    );
    --light-hatch: repeating-linear-gradient(
      115deg,
      var(--pencil) 0 calc(1.2px * var(--arcmin)),
      transparent 0 calc(9px * var(--arcmin))
    );
  }
  :root[data-ground='night'] {
    ${inksOf(grounds.night)}
  }
  html,
  body {
    margin: 0;
    height: 100%;
    background: var(--ground);
    color: var(--ink);
    font: 600 var(--body) / 1.15 '${unsafeCSS(LETTERS)}', sans-serif;
    font-variant-numeric: tabular-nums;
    /* A word wider than its place goes on in the next line. */
    overflow-wrap: break-word;
    -webkit-text-size-adjust: none;
    text-size-adjust: none;
  }
`;

/**
 * For every part: buttons look like words on paper, and the focus is drawn where the keyboard is.
 */
export const base: CSSResult = css`
  :host {
    box-sizing: border-box;
  }
  :host([hidden]) {
    display: none;
  }
  *,
  *::before,
  *::after {
    box-sizing: border-box;
  }
  h1,
  h2,
  h3,
  p,
  ol,
  ul {
    margin: 0;
    padding: 0;
    font: inherit;
    list-style: none;
  }
  button,
  input,
  select {
    font: inherit;
    color: inherit;
    background: none;
    border: none;
    border-radius: 0;
    margin: 0;
    padding: 0;
    text-align: inherit;
  }
  button {
    min-width: var(--touch);
    min-height: var(--touch);
    cursor: pointer;
    touch-action: manipulation;
    -webkit-tap-highlight-color: transparent;
    user-select: none;
  }
  button:active {
    background: var(--light-hatch);
  }
  :focus-visible {
    outline: var(--heavy) solid var(--ink);
    outline-offset: calc(-1 * var(--heavy));
  }
  .unseen {
    position: absolute;
    width: 1px;
    height: 1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
  }
  @media (prefers-reduced-motion: reduce) {
    * {
      animation: none;
      transition: none;
    }
  }
`;

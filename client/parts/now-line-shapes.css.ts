import { css } from 'lit';

/** A line where it is short, on a phone, or has a pad with digits in it. */
export const nowLineShapes = css`
  :host([brief]) {
    --place: max(calc(116px * var(--arcmin)), var(--touch));
    grid-template-columns: calc(14px * var(--arcmin)) minmax(0, 1fr) auto;
    grid-template-rows: auto minmax(0, 1fr);
  }
  /* Under the ring: under a title of two lines, or beside a name, it would have no room. */
  :host([brief]) tally-strokes {
    margin: 0;
    font-size: var(--body);
    font-weight: 700;
  }
  /* Who and when over the words: beside them a title would have half of its width. */
  :host([brief]) .side {
    grid-area: 1 / 2;
    flex-direction: row;
    align-items: center;
    justify-content: flex-start;
    column-gap: 0.7em;
    padding-bottom: 0;
  }
  :host([brief]) :is(.when, .under) {
    flex: none;
  }
  :host([brief]) .what {
    grid-area: 2 / 2;
    margin: 0 calc(12px * var(--arcmin)) calc(10px * var(--arcmin));
  }
  /* What is opened in it has both. */
  :host([brief]) .place {
    grid-column: 3;
  }
  :host([brief]) .side:has(~ .what line-strip) {
    display: none;
  }
  :host([brief]) .what:has(line-strip) {
    grid-row: 1 / 3;
  }
  :host([brief]) tap-ring {
    --word: var(--body);
  }
  :host([brief]) .page {
    --row-size: var(--small);
  }
  :host([brief]) h2 {
    font-size: var(--body);
  }
  :host([narrow]) {
    --place: calc(158px * var(--arcmin));
    grid-template-columns: calc(14px * var(--arcmin)) minmax(0, 1fr) var(--place);
    grid-template-rows: auto 1fr;
  }
  :host([narrow]) .side {
    grid-row: 1;
    grid-column: 2;
    flex-flow: row wrap;
    align-items: center;
    justify-content: flex-start;
    align-content: center;
    column-gap: 0.6em;
    padding-bottom: 0;
  }
  :host([narrow]) .what {
    container-type: inline-size;
    grid-column: 2;
    grid-row: 2;
    margin-left: calc(12px * var(--arcmin));
    overflow: visible;
    margin-bottom: calc(26px * var(--arcmin));
  }
  :host([narrow]) h2 {
    font-size: clamp(var(--strong), 100cqw / (min(var(--chars), 14) * 0.54), var(--highest));
  }
  :host([narrow]) .mind {
    line-height: 1.3;
  }
  :host([narrow]) :is(.page, .row) {
    display: block;
  }
  :host([narrow]) .place {
    grid-column: 3;
    width: auto;
    grid-template-rows: minmax(96px, 1fr) auto;
  }
  :host([narrow]) .weigh {
    margin: 0;
  }
  /* Half as high again as each line beside it. */
  :host(:not([narrow], [brief])) {
    grid-row: span 2;
  }
  :host([padded]:not([narrow], [brief])) {
    grid-row: span 3;
  }
  /* Nobody starts or ends what is just being weighed: the pad has the whole line. */
  :host([padded]) :is(.place, ruled-line),
  :host([padded]:not([narrow])) .side {
    display: none;
  }
  :host([padded]) .what {
    grid-column: 2 / -1;
    margin: calc(4px * var(--arcmin)) calc(12px * var(--arcmin));
  }
  @container (max-width: 136px) {
    :host([narrow]) .acts {
      flex-direction: column;
      gap: 0;
    }
  }
`;

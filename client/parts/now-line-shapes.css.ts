import { css } from 'lit';

/** A line where it is short, on a phone, or has a pad with digits in it. */
export const nowLineShapes = css`
  :host([brief]) {
    grid-template-columns:
      calc(14px * var(--arcmin)) calc(166px * var(--arcmin)) minmax(0, 1fr)
      auto;
  }
  :host([brief]) .place {
    width: calc(112px * var(--arcmin));
  }
  :host([brief]) ruled-line {
    right: calc(112px * var(--arcmin));
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
    grid-template-columns: calc(14px * var(--arcmin)) minmax(0, 1fr) calc(158px * var(--arcmin));
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
    .acts {
      flex-direction: column;
      gap: 0;
    }
  }
  :host([narrow]) ruled-line {
    right: calc(158px * var(--arcmin));
  }
`;

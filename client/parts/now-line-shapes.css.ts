import { css } from 'lit';

/** A line where it is short, on a phone, or has a pad with digits in it. */
export const nowLineShapes = css`
  /*
   * As wide as the wall and two rows high: who over when, the title over what is to be minded, the
   * tally before the ring.
   */
  :host([brief]) {
    grid-template:
      minmax(0, 1fr) / calc(14px * var(--arcmin)) minmax(calc(216px * var(--arcmin)), auto)
      minmax(0, 1fr) auto;
  }
  :host([brief]) .side {
    grid-area: 1 / 2;
    display: grid;
    grid-template-columns: auto auto;
    justify-content: start;
    align-content: center;
    align-items: baseline;
    gap: 0 0.35em;
    padding: 0 calc(14px * var(--arcmin)) 0 calc(12px * var(--arcmin));
    line-height: 1;
  }
  :host([brief]) .who {
    grid-column: 1 / -1;
    /* Its minutes are ruled beside it. */
    max-width: calc(100% - 96px * var(--arcmin));
    line-height: 1.08;
  }
  :host([brief]) ruled-line {
    grid-area: 1 / 2;
    position: relative;
    inset: auto;
    place-self: center end;
    /* Thin, so that the minutes of an hour stand apart on so short a rule. */
    --line: max(1px, calc(0.6px * var(--arcmin)));
    width: calc(84px * var(--arcmin));
    height: calc(11px * var(--arcmin));
    margin: 0 calc(14px * var(--arcmin)) calc(30px * var(--arcmin)) 0;
    pointer-events: none;
  }
  :host([brief]) .what {
    grid-area: 1 / 3;
    margin: 0 calc(12px * var(--arcmin)) 0 0;
  }
  :host([brief]) .row {
    line-height: 1.1;
  }
  :host([brief]) .place {
    grid-area: 1 / 4;
    container-type: normal;
    width: auto;
    /* Wide enough for its longest word in small letters. */
    --words: calc(var(--word-letters) * 0.668 * var(--small));
    grid-template:
      minmax(0, 1fr) / auto
      max(calc(116px * var(--arcmin)), var(--touch), var(--words));
  }
  :host([brief]) .acts {
    grid-area: 1 / 1;
    align-items: center;
  }
  :host([brief]) tally-strokes {
    margin: 0;
    font-size: var(--body);
    font-weight: 700;
  }
  /* Its tally is another line's, where something is opened in it. */
  :host([brief][opened]) .acts {
    display: none;
  }
  :host([brief]) tap-ring {
    grid-area: 1 / 2;
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
  :host([opened='pad']:not([narrow], [brief])) {
    grid-row: span 3;
  }
  /* Nobody starts or ends what is just being weighed: the pad has the whole line. */
  :host([opened='pad']) :is(.place, ruled-line),
  :host([opened='pad']:not([narrow])) .side {
    display: none;
  }
  :host([opened='pad']) .what {
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

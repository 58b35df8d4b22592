import { css } from 'lit';

export const timeChartStyles = css`
  :host {
    display: grid;
    grid-template-rows: minmax(0, 1fr) auto;
    grid-template-columns: minmax(0, 1fr);
    height: 100%;
    min-height: 0;
    font-size: calc(var(--small) * 0.94);
  }
  svg {
    display: block;
  }
  .day {
    display: grid;
    grid-template-rows: auto minmax(0, 1fr);
    grid-template-columns: minmax(0, 1fr);
    min-height: 0;
  }
  .sheet {
    position: relative;
  }
  .rule,
  .sheet {
    touch-action: pan-y;
    user-select: none;
    cursor: grab;
  }
  .rule {
    border-bottom: var(--line) solid var(--ink);
    font-weight: 600;
  }
  /* What moves has a layer of its own: to shift it nothing is drawn. */
  .time {
    overflow: hidden;
  }
  .time svg {
    will-change: transform;
  }
  .heads {
    position: absolute;
    inset: 0 auto auto 0;
    pointer-events: none;
  }
  .heads g {
    pointer-events: auto;
  }
  .scroll {
    overflow: hidden auto;
    min-height: 0;
  }
  text {
    fill: var(--ink);
  }
  .sheet text {
    font-weight: 600;
  }
  /* Where a name stands over a line, the line is interrupted. */
  .word {
    paint-order: stroke;
    stroke: var(--ground);
    stroke-width: 5;
    stroke-linejoin: round;
    cursor: pointer;
  }
  .half {
    stroke-width: var(--line);
  }
  .idle,
  .doing.waiting,
  text.done {
    fill: var(--soft);
  }
  .heads .name {
    font-weight: 800;
  }
  .names {
    fill: var(--ground);
  }
  path {
    fill: none;
    stroke: var(--ink);
    stroke-width: var(--hair);
  }
  .row,
  .stroke {
    stroke: var(--pencil);
  }
  .stroke {
    opacity: 0.5;
  }
  .bar {
    cursor: pointer;
  }
  .paper {
    fill: var(--ground);
  }
  .edge {
    fill: none;
    stroke: var(--ink);
    stroke-width: 1.4;
  }
  /* Planned for here, not here yet. */
  .place.waiting .edge {
    stroke-dasharray: 6 4;
  }
  .running .edge {
    stroke-width: 2.6;
  }
  .would-be .edge {
    stroke-dasharray: 6 4;
  }
  .instead {
    fill: url(#instead);
  }
  .done .edge {
    stroke: var(--pencil);
  }
  .gone {
    fill: url(#gone);
  }
  .chain .edge {
    stroke: var(--ink);
    stroke-width: var(--heavy);
    stroke-dasharray: none;
  }
  .link {
    stroke-width: var(--heavy);
  }
  .range {
    fill: url(#range);
  }
  .mid {
    stroke-width: var(--heavy);
  }
  .picked .paper,
  .picked .gone {
    fill: var(--ink);
  }
  .word.picked {
    fill: var(--ground);
    stroke: none;
  }
  .now {
    stroke: var(--brick);
    stroke-width: var(--heavy);
  }
  .hatch {
    stroke: var(--pencil);
    stroke-width: 1.6;
  }
  .strong {
    stroke: var(--ink);
    stroke-width: 2;
  }
  .foot {
    display: flex;
    align-items: center;
    justify-content: space-between;
    gap: 0 var(--edge);
    padding: 0.2em var(--edge);
    border-top: var(--line) solid var(--ink);
    font-size: var(--small);
    line-height: 1.3;
  }
  .why {
    flex: 1 1 auto;
    max-height: max(var(--touch), 8em);
    overflow: auto;
  }
  .what {
    font-weight: 800;
  }
  choice-strip {
    flex: none;
    font-size: var(--body);
    flex-wrap: nowrap;
  }
  /* On low glass a row more is worth more than a box as high as a gloved finger is wide. */
  @media (height < 700px) {
    choice-strip,
    ::slotted(*) {
      --touch: 60px;
    }
  }
  :host([narrow]) .foot {
    flex-direction: column;
    align-items: stretch;
  }
  /* Nobody prints from a phone. */
  :host([narrow]) slot {
    display: none;
  }
  :host([narrow]) choice-strip {
    flex-wrap: wrap;
  }
`;

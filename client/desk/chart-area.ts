import { html } from 'lit';
import { guard } from 'lit/directives/guard.js';
import { styled } from '../parts/styled.ts';
import type { Paper } from './chart-paper.ts';

/**
 * A drawing beside the heads, shifted to where it is looked at; drawn again only for another of
 * what it is made of.
 */
export function timeArea(
  { headPx, drawnPx }: Paper,
  { fromPx, heightPx }: { readonly fromPx: number; readonly heightPx: number },
  of: unknown[],
  draw: () => unknown,
) {
  const shift = styled({ transform: `translateX(${-fromPx}px)` });
  return html`<div class="time" ${styled({ 'margin-left': `${headPx}px` })}>
    <svg width=${drawnPx} height=${heightPx} ${shift}>${guard(of, draw)}</svg>
  </div>`;
}

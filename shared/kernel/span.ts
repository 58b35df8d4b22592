/**
 * Half-open: a piece may leave a slot at 14:00 and the next come in at 14:00. One unit for both.
 */
export type Span<Unit extends number = number> = { readonly start: Unit; readonly end: Unit };

/**
 * Whether two half-open spans share any time.
 * @example overlaps({ start: 0, end: 60 }, { start: 60, end: 90 }) //=> false
 */
export function overlaps(a: Span, b: Span): boolean {
  return a.start < b.end && b.start < a.end;
}

/**
 * Whether `instant` lies in the half-open span.
 * @example contains({ start: 0, end: 60 }, 60) //=> false
 */
export function contains(span: Span, instant: number): boolean {
  return span.start <= instant && instant < span.end;
}

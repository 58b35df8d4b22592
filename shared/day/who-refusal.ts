/** Why somebody was not let in, or may not do this, as data. */
export type WhoRefusal =
  /** Nobody at the desk has let this screen in. */
  | { readonly rule: 'screen-unknown' }
  | { readonly rule: 'screen-revoked' }
  /** It belongs to another face than the one it opened. */
  | { readonly rule: 'screen-elsewhere' }
  | { readonly rule: 'not-the-desk' }
  /** Only a person who answers for the hub may, and is known by a PIN. */
  | { readonly rule: 'needs-owner' }
  | { readonly rule: 'needs-pin' }
  | { readonly rule: 'wrong-pin' }
  | { readonly rule: 'poor-pin'; readonly least: number; readonly most: number }
  | { readonly rule: 'wrong-code' }
  | { readonly rule: 'code-over' }
  | { readonly rule: 'too-many-tries'; readonly waitS: number }
  | { readonly rule: 'unknown-screen' }
  | { readonly rule: 'name-taken'; readonly name: string }
  | { readonly rule: 'needs-station' }
  /** Without it nobody could let a screen in again. */
  | { readonly rule: 'last-desk' };

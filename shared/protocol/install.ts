/** What a device has to know that is to trust this hub, `/install.json`. */
export type InstallFacts = {
  /** SHA-256 of the kitchen's authority, in pairs; null where none has to be installed. */
  readonly fingerprint: string | null;
  /** Where other devices find the hub over TLS, the likeliest first; none where they cannot. */
  readonly addresses: readonly string[];
};

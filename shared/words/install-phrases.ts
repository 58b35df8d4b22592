/** Devices whose steps differ; their names stand on the device itself. */
export type DeviceKind = 'ios' | 'android' | 'chromeos' | 'windows' | 'mac' | 'linux' | 'firefox';

/** One step: what is done, and how. */
type Step = { readonly title: string; readonly how: string };

/** The page on which a tablet comes to this kitchen, and trusts it. */
export type InstallWords = {
  readonly title: string;
  readonly screens: string;
  /** On the device itself, before it trusts the kitchen. */
  readonly why: string;
  readonly found: Step;
  readonly get: Step;
  readonly compare: Step;
  readonly trust: Step;
  readonly notTried: string;
  readonly devices: Readonly<Record<DeviceKind, string>>;
  readonly others: string;
  readonly steps: Readonly<Record<DeviceKind, readonly string[]>>;
  readonly open: Step;
  readonly goOn: string;
  /** On the kitchen's computer, or a device that is in: how another one comes. */
  readonly join: Step;
  readonly scanFirst: Step;
  readonly compareThere: Step;
  readonly scanThen: Step;
  readonly letIn: Step;
  readonly toHome: Step;
  readonly alsoAt: string;
  /** Where there is no certificate to give. */
  readonly nothingToInstall: string;
  readonly scanOnly: Step;
  readonly inTheOpen: string;
  readonly alone: string;
  readonly stopIt: Step;
  readonly startIt: Step;
  readonly comeBack: Step;
  readonly ifPlain: string;
};

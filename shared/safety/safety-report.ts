import type { Interruption } from './interruption.ts';
import type { Broken } from './judgement.ts';
import type { Kind } from './row-schema.ts';

/** What a person should know beside the figures; none of these is a verdict. */
export type SafetyWarning =
  /** The come-up took longer than its row has, or began before the readings. */
  | { readonly warning: 'come-up-long'; readonly broken: Broken }
  | { readonly warning: 'come-up-began-before' }
  /** No oven was named, and it decides whether time at a temperature counts. */
  | { readonly warning: 'oven-unsaid' }
  /** No error of the thermometer was named, so none was counted. */
  | { readonly warning: 'error-unsaid' }
  | { readonly warning: 'few-readings'; readonly readings: number }
  | { readonly warning: 'silences'; readonly silences: number; readonly longest_s: number }
  /** Never above 135 °F: at 130 °F the printed times were not confirmed for every germ. */
  | { readonly warning: 'low-schedule' }
  | { readonly warning: 'interrupted'; readonly interruptions: readonly Interruption[] }
  | { readonly warning: 'cooling-began-before' };

export type CoolingReport = {
  /** From the start to the first stage; null while it is not reached, or nothing cooled. */
  readonly stage1_h: number | null;
  readonly total_h: number | null;
  /** Null where nothing cooled. */
  readonly met: boolean | null;
  readonly state: 'none' | 'met' | 'missed' | 'open';
};

/** What readings show. The names of its fields are those of the exported record. */
export type SafetyReport = {
  readonly profile: string;
  readonly profile_version: number;
  readonly kind: Kind;
  /** Tenfold kills at the coldest point; null where no table is for this kind. */
  readonly lethality_log: number | null;
  readonly lethality_needed_log: number | null;
  /** Of the time the printed table asks for, the share that was kept; null where there is none. */
  readonly dwell_share: number | null;
  /**
   * Whether the time was kept by the table and by the sum of kill, where the oven lets it count.
   */
  readonly dwell_met: boolean;
  /** Whether the oven lets it count; null where no oven was named and it matters. */
  readonly dwell_credited: boolean | null;
  /** Whether the kitchen's own row for the end of a cook is kept. */
  readonly end_met: boolean;
  readonly highest_c: number;
  /** Null where the readings begin when the piece is already hot. */
  readonly come_up_h: number | null;
  readonly cooling: CoolingReport;
  /** Rows that are broken and refuse. */
  readonly broken: readonly Broken[];
  readonly warnings: readonly SafetyWarning[];
  /** Rows by which the authority must be asked beforehand. */
  readonly variances: readonly string[];
};

/** The words for curing salt that two people weigh. */
export type CureWords = {
  /** What is to be weighed, as a place to tap. */
  asked(weight: string, mix: string): string;
  weighed(weight: string, first: string, second: string): string;
  readonly whoWeighs: string;
  readonly whoReads: string;
};

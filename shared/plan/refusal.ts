import type {
  Celsius,
  FileFault,
  Instant,
  Kilograms,
  LocalDay,
  Metres,
  Seconds,
  Text,
  WallTime,
} from '../kernel/index.ts';
import type { Breach } from './limits.ts';

/** Why a cook plan cannot be, as data with amounts; `shared/words` makes the sentence. */
export type PlanRefusal =
  /** It speaks of something that kitchen and catalogue do not have. */
  | ({ readonly rule: 'unknown-word' } & FileFault)
  | {
      readonly rule: 'closes-before-opening';
      readonly service: Text;
      readonly opens: WallTime;
      readonly closes: WallTime;
    }
  /** Nobody of the crew has a shift that reaches into the day or its eve. */
  | { readonly rule: 'nobody-there'; readonly eve: LocalDay; readonly day: LocalDay }
  /** Sales are counted for more quarters of an hour than the service has. */
  | (OfDish & {
      readonly rule: 'sales-after-closing';
      readonly counted: number;
      readonly open: number;
    })
  | (OfDish & {
      readonly rule: 'portion-over-piece';
      readonly portionKg: Kilograms;
      readonly pieceGivesKg: Kilograms;
    })
  /** No smoker can take even one piece; each says why. */
  | (OfDish & {
      readonly rule: 'no-smoker';
      readonly setC: Celsius;
      readonly smokers: readonly Unfit[];
    })
  | (OfStep & {
      readonly rule: 'no-skill';
      readonly skill: Text;
      readonly needs: number;
      readonly has: number;
    })
  | (OfStep & { readonly rule: 'hand-lacks-skill'; readonly hand: string; readonly skill: Text })
  /** Nobody who can do it is there long enough in one go, even for one piece. */
  | (OfStep & { readonly rule: 'no-shift'; readonly needS: Seconds; readonly longestS: Seconds })
  | (OfStep & { readonly rule: 'no-station'; readonly bench: Text })
  | (OfStep & {
      readonly rule: 'no-room-to-keep';
      readonly where: 'cooler' | 'pans' | 'whole';
      readonly needs: number;
      readonly has: number;
    })
  /** From one moment to another it takes longer than the route allows, even for one piece. */
  | (OfDish & {
      readonly rule: 'limit-too-short';
      readonly from: Text;
      readonly to: Text;
      readonly needS: Seconds;
      readonly allowedS: Seconds;
    })
  /** A batch that the plan names is more than one smoker holds, or one shift or limit bears. */
  | (OfDish & {
      readonly rule: 'batch-too-large';
      readonly number: number;
      readonly pieces: number;
      readonly most: number;
      /** So many it can be. */
      readonly portions: number;
    })
  /** Work has begun on it, and the plan has it no more. */
  | { readonly rule: 'batch-begun'; readonly batch: Text; readonly pieces: number }
  /** More pieces of a cut than came. */
  | {
      readonly rule: 'not-delivered';
      readonly cut: Text;
      readonly needs: number;
      readonly has: number;
    }
  /** A step that has begun is gone from its route, or another would have to come before it. */
  | { readonly rule: 'step-begun'; readonly batch: Text; readonly step: Text }
  /** The chain before the first portion is longer than the time there is. */
  | (OfDish & {
      readonly rule: 'service-too-early';
      readonly opens: WallTime;
      readonly needS: Seconds;
      readonly hasS: Seconds;
      /** The first quarter of an hour at which it could. */
      readonly canOpenAt: Instant;
    })
  /** It is made of what other batches leave, and they leave too little. */
  | (OfDish & {
      readonly rule: 'trim-short';
      readonly cut: Text;
      readonly needKg: Kilograms;
      readonly hasKg: Kilograms;
      /** For so many portions it would do. */
      readonly portions: number;
    })
  /** Other limits than the last day had, and nothing that says why. */
  | {
      readonly rule: 'limits-changed';
      readonly why: 'no-reason' | 'rewritten' | 'other-profile';
      readonly from: LimitsName;
      readonly to: LimitsName;
    }
  /** A row of the profile of limits; a step of a dish breaks it, or a thing of the kitchen. */
  | (Breach & {
      readonly rule: 'limit-broken';
      readonly service?: Text;
      readonly dish?: Text;
      readonly step?: Text;
      readonly thing?: Text;
    });

/** A profile of limits, as one version has it. */
type LimitsName = { readonly id: string; readonly version: number };

type OfDish = { readonly service: Text; readonly dish: Text };
type OfStep = OfDish & { readonly step: Text };

/** Why a smoker cannot take a cut. */
export type Unfit = { readonly smoker: Text } & (
  | { readonly why: 'not-wished' }
  | { readonly why: 'heat'; readonly coolestC: Celsius; readonly hottestC: Celsius }
  | { readonly why: 'size'; readonly needs: Metres; readonly most: Metres }
  | { readonly why: 'weight'; readonly needs: Kilograms; readonly most: Kilograms }
);

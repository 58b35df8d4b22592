import { z } from 'zod';
import type { Frozen } from '../kernel/index.ts';
import { entry, textSchema } from '../kernel/index.ts';

/** The drawings that there are of a cut, and the parts that are told apart on each. */
export const drawnParts = {
  'rib slab': ['breastbone', 'strip', 'flap', 'tail', 'membrane', 'slab'],
  shoulder: ['fat', 'vein', 'gland', 'bone', 'cap', 'muscle'],
  brisket: ['hard fat', 'silverskin', 'thin end', 'vein', 'cap', 'flat', 'point'],
  'short ribs': ['silverskin', 'hard fat', 'ragged lean', 'bone side', 'meat'],
  'half bird': ['neck skin', 'vent fat', 'wing tip', 'breast', 'leg'],
} as const;

export type DrawingName = keyof typeof drawnParts;

const part = entry({
  part: z.exactOptional(z.string()).describe('Which part of the drawing it is, where there is one'),
  name: textSchema(),
  why: textSchema().describe('Why it comes off, or stays'),
});

const names = Object.keys(drawnParts) as [DrawingName, ...DrawingName[]];

/** How a cut is when it is trimmed right: what the hands at the table go by. */
export const standardSchema = entry({
  drawing: z.exactOptional(z.enum(names)).describe('Which drawing shows it; left out: none'),
  off: z.array(part).min(1).describe('What comes off, in the order in which it does'),
  stays: z.array(part).describe('What stays on, though a knife might take it'),
  right: textSchema().describe('How it looks when it is right'),
  caution: textSchema(),
});

export type Standard = Frozen<z.output<typeof standardSchema>>;

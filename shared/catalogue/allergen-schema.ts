import { z } from 'zod';

/** The nine major allergens of US law, and those that other laws add. */
const allergens = [
  ...['milk', 'egg', 'fish', 'crustacean shellfish', 'tree nuts', 'peanuts', 'wheat', 'soy'],
  ...['sesame', 'mustard', 'celery', 'sulphites', 'lupin', 'molluscs', 'other gluten cereals'],
] as const;

/** What the law asks to be named, in one word. */
export const allergenSchema = z.enum(allergens);

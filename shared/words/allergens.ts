import type { Say } from './say.ts';

/** Where a catalogue names one otherwise than English is written here. */
const english: Readonly<Record<string, string>> = { sulphites: 'sulfites', molluscs: 'mollusks' };

const spanish: Readonly<Record<string, string>> = {
  milk: 'leche',
  egg: 'huevo',
  fish: 'pescado',
  'crustacean shellfish': 'crustáceos',
  'tree nuts': 'nueces de árbol',
  peanuts: 'cacahuate',
  wheat: 'trigo',
  soy: 'soya',
  sesame: 'ajonjolí',
  mustard: 'mostaza',
  celery: 'apio',
  sulphites: 'sulfitos',
  lupin: 'altramuz',
  molluscs: 'moluscos',
  'other gluten cereals': 'otros cereales con gluten',
};

/**
 * An allergen as a catalogue names it.
 * @example sayAllergen('soy', { language: 'es' }) //=> 'soya'
 */
export function sayAllergen(allergen: string, { language }: Pick<Say, 'language'>): string {
  return (language === 'es' ? spanish : english)[allergen] ?? allergen;
}

import type { Command } from '../day/index.ts';
import type { PassDish } from './pass-dish.ts';
import type { PassView } from './pass-view.ts';

type PassCommand = Extract<Command, { kind: 'sold' | 'soldOut' | 'panEmpty' }>;

/** The pass with one more tap of its own over it; what makes no sense leaves it as it is. */
export function layPass(view: PassView, command: PassCommand): PassView {
  const at = view.dishes.findIndex((dish) => isAbout(dish, command));
  const dish = view.dishes[at];
  const isOfNow = command.kind === 'panEmpty' || command.service === view.service?.id;
  if (!dish || !isOfNow) return view;
  return { ...view, dishes: view.dishes.with(at, layDish(dish, command)) };
}

const isAbout = ({ dish, pans }: PassDish, command: PassCommand): boolean =>
  command.kind === 'panEmpty'
    ? pans.some(({ batch }) => batch === command.batch)
    : dish === command.dish;

function layDish(dish: PassDish, command: PassCommand): PassDish {
  switch (command.kind) {
    case 'sold':
      return { ...dish, sold: command.sold };
    case 'soldOut':
      return { ...dish, soldOutAt: command.tappedAt };
    case 'panEmpty':
      return {
        ...dish,
        pans: dish.pans.map((pan) =>
          pan.batch === command.batch ? { ...pan, isEmptied: true } : pan,
        ),
      };
  }
}

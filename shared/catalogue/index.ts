export type { Cut, Tub } from './cut-schema.ts';
export type { Mix } from './mix-schema.ts';
export { readCatalogue } from './read.ts';
export type { Round } from './round-schema.ts';
export {
  type Chosen,
  type ChosenStep,
  chosenCut,
  chosenLimits,
  chosenOptions,
  chosenSteps,
  spansOf,
} from './route.ts';
export type { Choice, Moment, Route, RouteLimit, Step, StepOf } from './route-schema.ts';
export { type Catalogue, catalogueSchema, type Dish } from './schema.ts';
export { type DrawingName, drawnParts, type Standard } from './standard-schema.ts';

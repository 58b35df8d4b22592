import { z } from 'zod';
import type { Place } from '../day/index.ts';
import type { PersonId, ScreenId, StationId } from '../kernel/index.ts';
import type {
  ClaimAsk,
  LanguageAsk,
  LetInAsk,
  MoveAsk,
  PinAsk,
  ProveAsk,
  RenameAsk,
  RevokeAsk,
  SecretAsk,
} from './who.ts';

const id = <Id extends string>() =>
  z
    .string()
    .min(1)
    .max(120)
    .transform((text) => text as Id);
/** As many letters as a list at the desk shows. */
const name = z.string().trim().min(1).max(40);
const code = z.string().min(1).max(20);
const pin = z.string().max(20);
const STATIONS_MAX = 50;

const place: z.ZodType<Place> = z.strictObject({
  role: z.enum(['wall', 'pit', 'pass', 'desk']),
  stations: z.array(id<StationId>()).max(STATIONS_MAX),
});

/** What the doors under /api let in, each with its keys and no other. */
export const whoSchemas = () => ({
  nothing: z.strictObject({}),
  claim: z.strictObject({ code, name }) satisfies z.ZodType<ClaimAsk>,
  secret: z.strictObject({ secret: z.string().max(100) }) satisfies z.ZodType<SecretAsk>,
  letIn: z.strictObject({ code, name, place }) satisfies z.ZodType<LetInAsk>,
  rename: z.strictObject({ screen: id<ScreenId>(), name }) satisfies z.ZodType<RenameAsk>,
  move: z.strictObject({ screen: id<ScreenId>(), place }) satisfies z.ZodType<MoveAsk>,
  revoke: z.strictObject({ screen: id<ScreenId>() }) satisfies z.ZodType<RevokeAsk>,
  pin: z.strictObject({
    person: id<PersonId>(),
    pin: pin.nullable(),
    isOwner: z.boolean(),
  }) satisfies z.ZodType<PinAsk>,
  language: z.strictObject({
    person: id<PersonId>(),
    language: z.enum(['en', 'es']).nullable(),
  }) satisfies z.ZodType<LanguageAsk>,
  prove: z.strictObject({ person: id<PersonId>(), pin }) satisfies z.ZodType<ProveAsk>,
});

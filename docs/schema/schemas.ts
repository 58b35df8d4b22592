import { z } from 'zod';
import { catalogueSchema } from '../../shared/catalogue/index.ts';
import { forecastFileSchema } from '../../shared/cook/index.ts';
import { kitchenSchema } from '../../shared/kitchen/index.ts';
import { cookPlanSchema } from '../../shared/plan/index.ts';
import { limitsFileSchema } from '../../shared/safety/index.ts';

const files = {
  catalogue: { schema: catalogueSchema, title: 'What a kitchen knows how to make' },
  kitchen: { schema: kitchenSchema, title: 'A kitchen and its crew' },
  forecast: { schema: forecastFileSchema, title: 'A piece, its smoker, and what was read of it' },
  limits: { schema: limitsFileSchema, title: 'How the limits of a kitchen came to be other' },
  'cook-plan': { schema: cookPlanSchema, title: 'What a kitchen means to serve on one day' },
} as const;

/** One JSON Schema for each kind of file that a person writes, by the name of its file here. */
export function schemaFiles(): Map<string, string> {
  const entries = Object.entries(files).map(([name, { schema, title }]) => {
    const { $schema, ...json } = z.toJSONSchema(schema, { io: 'input' });
    return [
      `${name}.schema.json`,
      `${JSON.stringify({ $schema, title, ...json }, null, 2)}\n`,
    ] as const;
  });
  return new Map(entries);
}

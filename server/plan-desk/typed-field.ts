import { z } from 'zod';
import type { Catalogue } from '../../shared/catalogue/index.ts';
import { textSchema } from '../../shared/kernel/index.ts';
import { planEditorWords, type Say, textIn } from '../../shared/words/index.ts';

const named = z.object({
  services: z.array(
    z.object({ name: textSchema(), dishes: z.array(z.object({ dish: z.string() })) }),
  ),
});

const PLACE = /services\[(\d+)\](?:\.dishes\[(\d+)\])?\.(?:.*\.)?(\w+)$/;

/**
 * Where in a typed plan something is, as the desk has it on the page; the place in a file where the
 * page has no name for it. @example 'services[0].dishes[1].sales.portions' //=> 'Lunch, Slaw,
 * portions'
 */
export function typedField(
  path: string,
  { plan, catalogue, say }: { plan: unknown; catalogue: Catalogue; say: Say },
): string {
  const place = PLACE.exec(path);
  const services = named.safeParse(plan).data?.services;
  const service = services?.[Number(place?.[1])];
  const field = wordFor(place?.[3], say);
  if (!place || !service || field === null) return path;
  const planned = place[2] === undefined ? undefined : service.dishes[Number(place[2])];
  const dish = catalogue.dishes.find(({ id }) => id === planned?.dish);
  const names = [service.name, ...(dish ? [dish.name] : [])].map((text) => textIn(text, say));
  return [...names, field].join(', ');
}

function wordFor(field: string | undefined, { language }: Say): string | null {
  const { portions, ready, opens, closes } = planEditorWords[language];
  const words: Readonly<Record<string, string>> = { portions, ready, opens, closes };
  return (field && words[field]) ?? null;
}

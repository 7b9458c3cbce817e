import { materials } from '../../calculators/materials/index.ts';
import { resolvedMaterials } from '../../calculators/materials/resolve.ts';

/** The materials' numbers in SI: fetched when a pour is written down from a plan. */
export const GET = (): Response =>
  new Response(JSON.stringify(resolvedMaterials(materials)), {
    headers: { 'content-type': 'application/json' },
  });

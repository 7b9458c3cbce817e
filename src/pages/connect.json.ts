import { formulas } from '../../calculators/formulas/index.ts';
import { graphOf } from '../find/graph.ts';

/** Which formula joins which quantities, fetched when the reader first asks. */
export function GET(): Response {
  return new Response(JSON.stringify(graphOf(Object.values(formulas))), {
    headers: { 'content-type': 'application/json; charset=utf-8' },
  });
}

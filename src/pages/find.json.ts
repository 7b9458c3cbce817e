import { buildIndex } from '../find/build.ts';
import { gather } from '../find/gather.ts';

/** The index of the search, fetched when the reader first types. */
export function GET(): Response {
  return new Response(JSON.stringify(buildIndex(gather(process.cwd()))), {
    headers: { 'content-type': 'application/json; charset=utf-8' },
  });
}

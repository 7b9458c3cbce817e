import { defineMiddleware } from 'astro:middleware';
import { pageTogether } from './together/page.ts';

/** The last hand on every page: no line ends between a number and its unit. */
export const onRequest = defineMiddleware(async (_, next) => {
  const response = await next();
  if (!response.headers.get('content-type')?.startsWith('text/html')) return response;
  return new Response(pageTogether(await response.text()), response);
});

import type { APIRoute } from 'astro';
import { noticesOf } from '../cli/notices.ts';

/** The licences of what these pages are made of, from the lock file of the build. */
export const GET: APIRoute = () =>
  new Response(noticesOf(process.cwd()), { headers: { 'content-type': 'text/plain; charset=utf-8' } });

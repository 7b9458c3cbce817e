import type { APIRoute } from 'astro';
import { fittings, type Fitting } from '../../../calculators/meshes/fittings.ts';
import { writeObj, writeStl, writeTextStl, writeThreeMf } from '../../../calculators/meshes/write.ts';

const writers = { stl: writeStl, 'text-stl': writeTextStl, obj: writeObj, '3mf': writeThreeMf };

/** The fittings of the mill as files, made when the site is built. */
export function getStaticPaths() {
  return fittings.map((fitting) => ({ params: { file: fitting.file }, props: { fitting } }));
}

export const GET: APIRoute<{ fitting: Fitting }> = ({ props: { fitting } }) =>
  new Response(writers[fitting.format](fitting.mesh()) as Uint8Array<ArrayBuffer>, {
    headers: { 'content-type': 'model/*' },
  });

import { strToU8, zipSync } from 'fflate';
import type { Triangles } from './triangles.ts';

/** Writers for the mill's own parts and for tests; lengths as they stand in the mesh. */

const cornersOf = ({ points, corners }: Triangles, face: number): number[][] =>
  [0, 1, 2].map((i) => {
    const p = 3 * corners[3 * face + i]!;
    return [points[p]!, points[p + 1]!, points[p + 2]!];
  });

function normalOf([a, b, c]: readonly (readonly number[])[]): number[] {
  const u = [0, 1, 2].map((d) => b![d]! - a![d]!) as [number, number, number];
  const v = [0, 1, 2].map((d) => c![d]! - a![d]!) as [number, number, number];
  const n = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
  const length = Math.hypot(...n) || 1;
  return n.map((x) => x / length);
}

const short = (x: number): string => String(Number(x.toPrecision(9)));

export function writeStl(mesh: Triangles): Uint8Array {
  const faces = mesh.corners.length / 3;
  const bytes = new Uint8Array(84 + 50 * faces);
  const view = new DataView(bytes.buffer);
  view.setUint32(80, faces, true);
  for (let face = 0; face < faces; face += 1) {
    const three = cornersOf(mesh, face);
    [normalOf(three), ...three].flat().forEach((x, i) => view.setFloat32(84 + 50 * face + 4 * i, x, true));
  }
  return bytes;
}

export function writeTextStl(mesh: Triangles, name = 'part'): Uint8Array {
  const lines = [`solid ${name}`];
  for (let face = 0; face < mesh.corners.length / 3; face += 1) {
    const three = cornersOf(mesh, face);
    lines.push(`facet normal ${normalOf(three).map(short).join(' ')}`, ' outer loop');
    for (const at of three) lines.push(`  vertex ${at.map(short).join(' ')}`);
    lines.push(' endloop', 'endfacet');
  }
  lines.push(`endsolid ${name}`, '');
  return strToU8(lines.join('\n'));
}

export function writeObj({ points, corners }: Triangles, name = 'part'): Uint8Array {
  const lines = [`o ${name}`];
  for (let i = 0; i < points.length; i += 3)
    lines.push(`v ${short(points[i]!)} ${short(points[i + 1]!)} ${short(points[i + 2]!)}`);
  for (let i = 0; i < corners.length; i += 3)
    lines.push(`f ${corners[i]! + 1} ${corners[i + 1]! + 1} ${corners[i + 2]! + 1}`);
  return strToU8(`${lines.join('\n')}\n`);
}

export function writeThreeMf({ points, corners }: Triangles, unit = 'millimeter'): Uint8Array {
  const core = 'http://schemas.microsoft.com/3dmanufacturing/core/2015/02';
  const vertices: string[] = [];
  for (let i = 0; i < points.length; i += 3)
    vertices.push(
      `<vertex x="${short(points[i]!)}" y="${short(points[i + 1]!)}" z="${short(points[i + 2]!)}"/>`,
    );
  const triangles: string[] = [];
  for (let i = 0; i < corners.length; i += 3)
    triangles.push(`<triangle v1="${corners[i]!}" v2="${corners[i + 1]!}" v3="${corners[i + 2]!}"/>`);
  const model = `<?xml version="1.0" encoding="UTF-8"?>
<model unit="${unit}" xmlns="${core}"><resources><object id="1" type="model"><mesh><vertices>${vertices.join('')}</vertices><triangles>${triangles.join('')}</triangles></mesh></object></resources><build><item objectid="1"/></build></model>
`;
  const types = `<?xml version="1.0" encoding="UTF-8"?>
<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/></Types>
`;
  const rels = `<?xml version="1.0" encoding="UTF-8"?>
<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Target="/3D/3dmodel.model" Id="rel0" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/></Relationships>
`;
  return zipSync(
    {
      '[Content_Types].xml': strToU8(types),
      '_rels/.rels': strToU8(rels),
      '3D/3dmodel.model': strToU8(model),
    },
    // A fixed day, so that the same part gives the same file.
    { level: 9, mtime: new Date(1980, 0, 1, 12) },
  );
}

import { plainNumber } from '../core/print.ts';
import type { Pour } from './record.ts';

const columns = [
  'day',
  'plan',
  'metal °C',
  'mould °C',
  'gauge kPa',
  'pouring s',
  'charge g',
  'casting g',
  'other metal g',
  'edge mm',
  'in water g',
  'defects',
  'section',
  'filled',
  'modulus mm',
  'froze s',
  'margin',
  'note',
  'invented',
] as const;

/** Text in quotes where it must be; a cell that a spreadsheet would run as a formula gets an apostrophe. */
function cell(value: string | number | undefined): string {
  if (value === undefined) return '';
  if (typeof value === 'number') return plainNumber(value, { figures: 6 });
  const safe = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return /[",\n\r;]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

const times = (value: number | undefined, factor: number, less = 0): number | undefined =>
  value === undefined ? undefined : value * factor - less;

/** The log as a table: a line for each section of each pour, in the units of the bench. */
export function writeCsv(pours: readonly Pour[]): string {
  const lines = pours.flatMap(({ day, plan, did, found, invented }) =>
    (found.sections.length > 0 ? found.sections : [undefined]).map((section) => [
      day,
      plan.name,
      times(did.metal, 1, 273.15),
      times(did.mould, 1, 273.15),
      times(did.gauge, 1e-3),
      did.pouring,
      times(did.charge, 1e3),
      times(found.casting, 1e3),
      times(found.rest, 1e3),
      times(found.edge, 1e3),
      times(found.inWater, 1e3),
      found.defects.join('; '),
      section?.name,
      section?.filled,
      times(section?.modulus, 1e3),
      section?.froze,
      section?.margin,
      found.note,
      invented ? 'yes' : '',
    ]),
  );
  return [[...columns], ...lines].map((line) => line.map(cell).join(',')).join('\r\n') + '\r\n';
}

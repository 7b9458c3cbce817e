import { plainNumber } from '../../../calculators/core/print.ts';
import { habitUnit } from '../../../calculators/core/shop-units.ts';
import { fromSI } from '../../../calculators/core/units.ts';
import type { Pour } from '../../../calculators/pour-log/record.ts';
import { readHabit } from '../habit.ts';

/** A pour in one line, in the units of the shop. */
export function lineOf({ did, found }: Pour): string {
  const habit = readHabit();
  const [scale, small] = [habitUnit('°C', habit), habitUnit('g', habit)];
  const degrees = (kelvin: number): string => `${Math.round(fromSI(kelvin, scale))} ${scale}`;
  const mass = (kg: number): string => `${plainNumber(fromSI(kg, small), { figures: 4 })} ${small}`;
  const parts = [
    did.metal === undefined ? '' : `metal ${degrees(did.metal)}`,
    did.mould === undefined ? '' : `mould ${degrees(did.mould)}`,
    did.charge === undefined ? '' : `charge ${mass(did.charge)}`,
    found.casting === undefined ? '' : `casting ${mass(found.casting)}`,
    ...found.sections.map(({ name, filled }) =>
      filled === 'full' || filled === 'not looked at'
        ? ''
        : `${name} ${filled === 'part' ? 'filled in part' : 'not filled'}`,
    ),
    found.defects.length > 0 ? found.defects.join(', ') : '',
    found.note,
  ].filter(Boolean);
  const line = parts.join('; ');
  return line === '' ? '' : `${line.charAt(0).toUpperCase()}${line.slice(1)}${/[.?]$/.test(line) ? '' : '.'}`;
}

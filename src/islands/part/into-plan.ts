import { plainNumber } from '../../../calculators/core/print.ts';
import { habitUnit, type Habit } from '../../../calculators/core/shop-units.ts';
import { fromSI, type UnitSymbol } from '../../../calculators/core/units.ts';
import type { PartSection } from '../../../calculators/meshes/sections.ts';
import type { Gated, Settled } from '../../workers/part-work.ts';
import type { Plan } from '../plan/store.ts';

/** Names by thickness; rows of the same thickness are told apart by a letter. */
export function sectionNames(
  sections: readonly Pick<PartSection, 'thickness'>[],
  habit: Habit = 'metric',
): string[] {
  const unit = habitUnit('mm', habit);
  const plain = sections.map(
    ({ thickness }) => `${plainNumber(fromSI(thickness, unit), { figures: 2 })} ${unit} thick`,
  );
  return plain.map((name, n) => {
    const same = plain.flatMap((other, at) => (other === name ? [at] : []));
    return same.length < 2 ? name : `${name} ${String.fromCharCode(65 + same.indexOf(n))}`;
  });
}

/** The plan's inputs from a part: its rows, its size and its metal; everything else stands at its start. */
export function planOf(
  file: string,
  settled: Pick<Settled, 'volume' | 'area' | 'extent' | 'seen'>,
  { sections, added }: Pick<Gated, 'sections'> & { readonly added?: Gated['added'] },
  metal: string,
  /** m² */
  gate: number,
  /** How the shop measures: the plan shows the numbers so, and keeps them as they are written. */
  habit: Habit = 'metric',
): Plan {
  const written = (si: number, unit: UnitSymbol, figures = 3): string => {
    const shown = habitUnit(unit, habit);
    return `${plainNumber(fromSI(si, unit), { figures })} ${unit}${shown === unit ? '' : ` ~ ${shown}`}`;
  };
  const names = sectionNames(sections, habit);
  const [long, wide, high] = settled.extent;
  const word = file
    .replace(/\.[^.]+$/, '')
    .replace(/[-_]+/g, ' ')
    .trim();
  return {
    name: (word.charAt(0).toUpperCase() + word.slice(1)).slice(0, 60) || 'Part',
    texts: {
      metal,
      'gate.area': written(gate, 'mm²'),
      ...(added && { 'sprue.volume': written(added.stub + added.button, 'cm³') }),
      sections: sections.map((one, n) => ({
        name: names[n]!,
        shape: one.shape,
        thickness: written(one.thickness, 'mm'),
        width: written(one.width, 'mm'),
        length: written(one.length, 'mm'),
        pieces: String(one.pieces),
        run: written(Math.max(one.run, one.before + one.thickness), 'mm'),
        before: written(one.before, 'mm'),
        through: one.through < 0 ? '' : names[one.through]!,
        fronts: String(one.fronts),
      })),
      'part.by': 'volume',
      'part.volume': written(settled.volume, 'cm³', 4),
      'part.area': written(settled.area, 'cm²', 4),
      'part.length': written(Math.max(long, wide, high), 'mm', 4),
      'part.height': written(high, 'mm', 4),
      'part.shadow': written(settled.seen[2]!.area, 'cm²'),
    },
  };
}

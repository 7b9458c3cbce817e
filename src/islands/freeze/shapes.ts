import type { Inputs } from '../form-entries.ts';

/** What a section is put together from, and the fields each asks for. */
export const shapes = {
  plate: ['thickness', 'width'],
  bar: ['diameter', 'length'],
  corner: ['thickness', 'second', 'arm', 'chill'],
  tee: ['thickness', 'second', 'arm', 'chill'],
  boss: ['thickness', 'width', 'boss.width', 'boss.height', 'chill'],
  block: ['thickness', 'width', 'depth'],
  'square-boss': ['thickness', 'width', 'boss.width', 'boss.height', 'chill'],
  drawn: ['side', 'turned', 'smooth', 'squares'],
} as const;

export type ShapeName = keyof typeof shapes;

const forSome: ReadonlySet<string> = new Set(Object.values(shapes).flat());

/** Those that count for the shape chosen: the rest are not shown. */
export function shown(inputs: Inputs, shape: ShapeName, chilled: boolean): Inputs {
  const asks: readonly string[] = shapes[shape];
  const metalChill = chilled && (asks.includes('chill') || shape === 'drawn');
  return Object.fromEntries(
    Object.entries(inputs).filter(([name]) => {
      if (name === 'squares') return false;
      if (name === 'chill.depth') return metalChill && asks.includes('chill');
      if (name.startsWith('chill.')) return metalChill;
      return !forSome.has(name) || asks.includes(name);
    }),
  );
}

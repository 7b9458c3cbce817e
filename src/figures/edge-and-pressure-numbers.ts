import { evaluate } from '../../calculators/core/solve.ts';
import { cornerRadius } from '../../calculators/formulas/filling/corner-radius.ts';
import { edgeRadius } from '../../calculators/formulas/filling/edge-radius.ts';
import { figures, type FigureTable } from './drawing.ts';
import { bronze } from './lamp-shield.ts';

const heads = Array.from({ length: 14 }, (_, i) => 20 + 10 * i);
const suctions = [0, 2, 5, 10, 15, 20, 25, 30, 35, 40, 50];

/** Radius in mm that bronze leaves on a straight edge and in a three-faced corner, by head (mm) and suction (kPa). */
export function edgeNumbers() {
  const at = (head: number, suction: number) => ({
    gamma: bronze['surface-tension'],
    rho: bronze['density.liquid'],
    h: head / 1000,
    dp: suction * 1000,
    p_gas: 0,
  });
  const millimetres = (metres: number): number => Number((metres * 1000).toPrecision(3));
  const edge = heads.map((h) => suctions.map((p) => millimetres(evaluate(edgeRadius, at(h, p)))));
  const corner = heads.map((h) => suctions.map((p) => millimetres(evaluate(cornerRadius, at(h, p)))));
  const shown = [0, 5, 10, 20, 50].map((p) => suctions.indexOf(p));
  const table: FigureTable = {
    caption: 'Radius left on a straight edge, mm; a three-faced corner has twice as much',
    head: ['Head', ...shown.map((k) => `${suctions[k]} kPa`)],
    rows: [20, 40, 80, 120, 150].map((head) => [
      `${head} mm`,
      ...shown.map((k) => figures(edge[heads.indexOf(head)]![k]!)),
    ]),
  };
  return { heads, suctions, edge, corner, table };
}

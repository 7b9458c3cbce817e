import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { createRandom } from '../../calculators/core/random.ts';
import { solve, usualOf } from '../../calculators/core/solve.ts';
import { solverFor } from '../../calculators/core/solver.ts';
import { withWritten, type SolverOf } from '../../calculators/core/written.ts';
import { materials } from '../../calculators/materials/index.ts';
import { resolvedMaterials } from '../../calculators/materials/resolve.ts';
import { completeInputs } from '../../calculators/models/inputs.ts';
import { pourPlan } from '../../calculators/models/pour-plan.ts';
import { startLedger } from '../../calculators/models/pour-plan/ledger.ts';
import { tryPlan } from '../../calculators/models/pour-plan/run.ts';
import { writtenOut } from '../../calculators/models/pour-plan/written-out.ts';
import { writtenOutFile, writtenOutText } from '../../src/cli/written-out.ts';

const named = writtenOut.map(([formula, find, solver]) => ({
  name: `${formula.id} for ${find}`,
  formula,
  find,
  solver,
}));

describe('the equations of the plan written out as code', () => {
  it('are those of the formulas; when they are not, run npm run index', () => {
    const written = existsSync(writtenOutFile) ? readFileSync(writtenOutFile, 'utf8') : '';
    expect(written).toBe(writtenOutText().content);
  });

  // The text, interpreted, is the other side; that it is solved rightly is held by the published checks.
  it.each(named)(
    '$name: the same number as its text gives, to the last digit',
    ({ formula, find, solver }) => {
      const random = createRandom(`${formula.id} ${find}`);
      const start = usualOf(formula);
      const [first = ''] = Object.keys(formula.symbols);
      const usual = Object.entries({ ...start, [first]: solverFor(formula)(start) }).filter(
        ([name]) => name !== find,
      );
      const read = solverFor(formula, find);
      let answered = 0;
      for (let i = 0; i < 400; i += 1) {
        const point = Object.fromEntries(
          usual.map(([name, value]) => [name, value * Math.exp((i / 200) * random.normal())]),
        );
        const near = Math.exp(4 * random.normal());
        const [spoilt = ''] = usual[random.uniformInt(usual.length)]!;
        if (i % 20 === 7)
          point[spoilt] = [Number.NaN, Number.POSITIVE_INFINITY, 0, -1][random.uniformInt(4)]!;
        if (i % 20 === 13) delete point[spoilt];
        const value = solver(point, near);
        expect(value, JSON.stringify(point)).toBe(read(point, near));
        if (Number.isFinite(value)) answered += 1;
      }
      expect(answered).toBeGreaterThan(100);
    },
  );

  it('are looked for in the whole range where a search from the guess finds nothing', () => {
    for (const { formula, find, solver } of named.filter(({ solver: one }) => one.length === 1)) {
      const point = usualOf(formula);
      const solved = solve(formula, point, find);
      expect(solver(point, -1), formula.id).toBe(solved.ok ? solved.value : Number.NaN);
    }
  });

  it('are all that a trial asks for, in every mould', () => {
    const find = withWritten(writtenOut);
    const missing = new Set<string>();
    const asked = new Set<string>();
    const watching: SolverOf = (formula, symbol) => {
      const solver = find(formula, symbol);
      asked.add(formula.id);
      if (solver === solverFor(formula, symbol)) missing.add(`${formula.id} for ${symbol ?? 'its first'}`);
      return solver;
    };
    const books = resolvedMaterials(materials);
    const part: readonly object[] = [
      {},
      { 'part.by': 'volume' },
      { 'part.by': 'pattern', 'own.constant': '0.9 s/mm²' },
    ];
    for (const { id, role } of Object.values(materials)) {
      if (role !== 'mould' && role !== 'metal') continue;
      for (const more of part) {
        const given = { [role]: id, feeder: role === 'metal' ? 'none' : 'cylinder', ...more };
        const { values } = completeInputs(pourPlan, given, books);
        tryPlan(values, startLedger(), watching);
      }
    }
    expect([...missing]).toEqual([]);
    expect(asked.size).toBeGreaterThan(45);
  });
});

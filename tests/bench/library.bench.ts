import { formulaSpread } from '../../calculators/core/spread.ts';
import { solve, usualOf } from '../../calculators/core/solve.ts';
import { formulas } from '../../calculators/formulas/index.ts';
import { materials } from '../../calculators/materials/index.ts';
import { resolvedMaterials } from '../../calculators/materials/resolve.ts';
import { models } from '../../calculators/models/index.ts';
import { defaultInputs } from '../../calculators/models/inputs.ts';
import { compare, type Way } from './compare.ts';

const table = (title: string, ways: readonly Way[]): void => compare(title, ways as [Way, ...Way[]]);
const given = Object.values(formulas).map((formula) => {
  const [find = ''] = Object.keys(formula.symbols);
  return { formula, find, usual: usualOf(formula) };
});

table(
  'Each formula, solved for its first symbol',
  given.map(({ formula, find, usual }) => ({
    name: formula.id,
    run: () => (solve(formula, usual, find).ok ? 1 : 0),
  })),
);

// One input 10 % uncertain makes the spread a sampled one.
table(
  'Each formula, with its spread from 10,000 draws',
  given.map(({ formula, find, usual }) => {
    const [name = ''] = Object.keys(usual).filter((symbol) => symbol !== find && usual[symbol] !== 0);
    return {
      name: formula.id,
      run: () =>
        formulaSpread(formula, usual, { [name]: Math.abs(usual[name] ?? 0) / 10 }, find, 10_000)?.spread ?? 0,
    };
  }),
);

const books = resolvedMaterials(materials);
table(
  'Each model, with its usual inputs',
  Object.values(models).map((model) => {
    const { values } = defaultInputs(model, books);
    return { name: model.id, run: () => Object.keys(model.run(values).values).length };
  }),
);

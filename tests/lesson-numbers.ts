import { completeInputs } from '../calculators/models/inputs.ts';
import { materials } from '../calculators/materials/index.ts';
import { resolvedMaterials } from '../calculators/materials/resolve.ts';
import { models } from '../calculators/models/index.ts';
import { toSI, fromSI, type UnitSymbol } from '../calculators/core/units.ts';

/** Where a number is from: in words, or worked again here, in the unit stated, and held to an eighth. */
export type Origin = string | { readonly from: string; readonly is: () => number };

const modelled =
  (id: string, given: Readonly<Record<string, string>>, find: string, unit: UnitSymbol) => (): number => {
    const model = models[id]!;
    const { values } = completeInputs(model, given, resolvedMaterials(materials));
    return fromSI(model.run(values).values[find] ?? Number.NaN, unit);
  };

const scenario = 'the scenario: sizes and masses of the parts of the mill, and what its people say and do';
const advised = 'the race of sections and the edge figure: webs fill and edges are crisp from there on';
const gravity = 9.80665;

/** Where each number comes from that a lesson states and no component of it is given, works out or cites. */
export const accounted: Readonly<Record<string, Readonly<Record<string, Origin>>>> = {
  'alloys-and-their-freezing-range': {
    '962 °C': 'its-90: silver freezes at 961.78 °C',
    '1085 °C': 'its-90: copper freezes at 1084.62 °C',
    '7.5 g': 'what sterling means',
    '92.5 g': 'what sterling means',
  },
  'burnout-is-a-heat-problem': {
    '4 °C': scenario,
    '90 degrees': {
      from: 'the model of the lag, as the curve has it',
      is: modelled(
        'investment/centre-lag',
        { climb: '360 Δ°C', height: '100 mm', diameter: '75 mm', speed: '4 K/min' },
        'lag',
        'ΔK',
      ),
    },
    '100 °C': 'water boils at the pressure of the sea',
    '40 %': 'water to powder of plaster investments, cited in the lesson on mixing',
    '50 degrees': { from: 'above the boiling of water', is: () => 150 - 100 },
  },
  'density-tells': {
    '0.06 g': { from: 'a hundredth of the volume below, in water', is: () => (46 / 8.36 / 0.99) * 0.01 },
    '0.055 cm³': { from: 'a hundredth of 46 g over 8.36 g/cm³', is: () => (46 / 8.36 / 0.99) * 0.01 },
    '0.055 g': { from: 'that volume of water', is: () => (46 / 8.36 / 0.99) * 0.01 },
    '0.1 g': 'the last digit of a balance',
    '0.01 g': 'the last digit of a balance',
    '0.02 g': 'the last digit of a balance',
    '5.57 g': { from: 'the two weighings worked above it', is: () => 46.12 - 40.55 },
  },
  'does-the-cope-float': {
    '100 mm': scenario,
    '6 kg': {
      from: 'the lift worked below it, over gravity',
      is: () => (7520 * gravity * 0.08 * 0.01) / gravity,
    },
    '50 mm': 'trade-practice: preheating and dry floors, cited in the first lesson',
  },
  'draft-parting-cope-and-drag': {
    '0.7 mm': { from: 'twice 7 mm times the tangent of 3°', is: () => 2 * 7 * Math.tan((3 * Math.PI) / 180) },
    '20 mm': 'trade-practice: hand moulding, cited below the list',
    '60 mm': 'trade-practice: hand moulding, cited below the list',
  },
  'fill-against-freeze': {
    '40 mm': scenario,
    '200 °C': 'what oil-bonded sand stands: its material, and the lesson on warming',
  },
  'fire-gas-and-first-aid': {
    '2 mm': {
      from: '1.5 kg of bronze over 300 mm square',
      is: () => (1.5 / 7520 / 0.3 ** 2) * 1000,
    },
    '20 minutes': 'burns-first-aid: cool, call and cover, cited at the end of the list',
  },
  'flask-temperature': {
    '1.2 mm': scenario,
    '1.6 mm': scenario,
    '3 mm': scenario,
    '405 °C': {
      from: 'the model of the flask, as the curve has it',
      is: modelled(
        'investment/flask-temperature',
        {
          diameter: '75 mm',
          height: '100 mm',
          T_kiln: '500 °C',
          T_peak: '500 °C',
          cover: '6 mm',
          t_air: '120 s',
        },
        'cavity',
        '°C',
      ),
    },
    '160 degrees': 'the difference of the two numbers worked before it',
    '750 °C': 'trade-practice: ceiling of the burnout kiln, cited in the lesson on burnout',
  },
  'fume-smoke-and-dust': { '101 kPa': 'the air by the sea' },
  gates: { '0.5 m/s': 'campbell: critical velocity, cited in the unit on filling' },
  'gauges-and-altitude': {
    '80 %': { from: '0.8 of 1 bar', is: () => 80 },
    '10 kPa': advised,
    '20 kPa': advised,
  },
  'heat-clothing-and-reach': { '60 mm': scenario, '100 mm': 'an end of the curve' },
  'how-big-the-pattern': {
    '39.4 mm': { from: '40 mm less 1.5 %, the allowance of the table', is: () => 40 * 0.985 },
    '1.30 %': 'dooley: table of pattern allowances, cited above the table',
    '1.56 %': 'dooley: table of pattern allowances, cited above the table',
    '1.82 %': 'dooley: table of pattern allowances, cited above the table',
    '1.25 %': 'westermann: list of shrinkage allowances, cited above the table',
    '0.78 %': 'dooley: table of pattern allowances, cited above the table',
  },
  'how-far-it-runs': { '2 mm': scenario, '20 °C': 'cold sand' },
  'how-hot-how-heavy': { '790 °C': scenario, '0.02 g': 'the last digit of a balance' },
  'how-long-have-i-got': { '1.4 mm': scenario, '2.2 mm': scenario, '4.5 mm': scenario },
  'how-sharp-an-edge': { '80 mm': advised, '100 mm': advised },
  'making-up-and-deoxidising': {
    '7.5 %': 'what sterling means',
    '4.5 g': { from: '7.5 % of 60 g', is: () => 60 * 0.075 },
  },
  'mixing-by-mass-and-minute': {
    '29 inHg': scenario,
    '45 seconds': 'the middle of the 30 to 60 cited below it',
  },
  'moduli-in-order': {
    '4 mm': scenario,
    '9 mm': scenario,
    '10 mm': scenario,
    '14 mm': scenario,
    '18 mm': scenario,
  },
  'no-feeder': {
    '47 g': scenario,
    '5.6 cm³': scenario,
    '7 mm': scenario,
    '8 mm': scenario,
    '12 mm': scenario,
  },
  'numbers-you-can-trust': {
    '80 g': { from: '10 cm³ of silicon bronze', is: () => 10 * 8.36 },
    '8 g': 'a wrong answer',
    '8 kg': 'a wrong answer',
    '20 °C': scenario,
    '293 K': { from: 'the definition of °C', is: () => toSI(20, '°C') },
    '20 K': 'the definition of °C',
    '0.5 g': scenario,
    '0.5 %': scenario,
  },
  'section-by-section': { '4.5 mm': scenario, '7 mm': scenario },
  'sizing-a-feeder': { '22 mm': 'the next size above the one worked before it' },
  'small-charge-big-mould': {
    '35 °C': 'the heat balance worked below it, to the nearest five',
    '895 degrees': { from: 'the gap from freezing to cold sand', is: () => 915 - 20 },
  },
  'the-extra-head': { '10 kPa': advised, '20 kPa': advised },
  'the-four-fittings': { '2.5 mm': scenario },
  'the-log-and-your-own-constants': {
    '16 mm': scenario,
    '20 mm': scenario,
    '0.8 s': scenario,
    '1.3 s': scenario,
  },
  'warm-and-losing-it-again': { '8 mm': scenario, '1100 °C': 'about where bronze is poured' },
  'water-and-metal': {
    '120 °C': 'trade-practice: preheating of tools, cited below',
    '3 kPa': { from: 'bronze of 7520 kg/m³, 40 mm high', is: () => (7520 * gravity * 0.04) / 1000 },
  },
  'wax-and-sprues': { '3 mm': scenario, '8 mm': 'where the curves cross, rounded down' },
  'what-can-hurt-you': {
    '120 °C': 'trade-practice: preheating and dry floors, cited below the list',
    '150 °C': 'trade-practice: preheating and dry floors, cited below the list',
    '200 °C': 'trade-practice: preheating and dry floors, cited below the list',
    '50 mm': 'trade-practice: preheating and dry floors, cited below the list',
  },
  'what-sand-is': { '0.8 mm': 'twice the radius worked in the sentence' },
  'what-the-crucible-holds': {
    '100 g': scenario,
    '26 g': { from: 'liquid aluminium over liquid sterling, 2.43 over 9.24', is: () => (100 * 2430) / 9240 },
    '8.36 g/cm³': 'materials/silicon-bronze: density',
  },
  'what-warming-buys': {
    '765 degrees': { from: 'the gap from freezing to warm sand', is: () => 915 - 150 },
    '200 °C': 'read off the curve',
    '100 °C': 'water boils at the pressure of the sea',
  },
  'when-metal-enters-the-sand': { '35 kPa': scenario },
  'when-to-open-when-to-quench': {
    '95 °C': 'read off the curve',
    '20 minutes': 'burns-first-aid: cool, call and cover, cited in the first lesson',
  },
  'will-it-get-there': {
    '75 mm': scenario,
    '30 mm': scenario,
    '20 kPa': advised,
    '80 mm': advised,
  },
};

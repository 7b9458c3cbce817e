import type { Quantity } from '../../calculators/core/units.ts';

/** The relations asked most at the bench, each drawn from its formula. */
export interface Chart {
  readonly name: string;
  readonly title: string;
  readonly formula: string;
  readonly find: string;
  readonly against: string;
  readonly from: Quantity;
  readonly to: Quantity;
  readonly at?: Quantity;
  readonly given?: Readonly<Record<string, string>>;
  readonly by?: {
    readonly input: string;
    readonly values: readonly string[];
    readonly labels?: readonly string[];
  };
  readonly log?: 'x' | 'y' | 'both';
  readonly unit?: 'inHg' | 'kPa' | 'mm';
  readonly caption: string;
}

/** In the order of the page of charts. */
export const charts: readonly Chart[] = [
  {
    name: 'freezing-time',
    title: 'How long it takes to freeze',
    formula: 'freezing/time-both',
    find: 't',
    against: 'M',
    from: '0.4 mm',
    to: '8 mm',
    at: '2 mm',
    by: { input: 'T_m', values: ['20 °C', '150 °C', '300 °C', '450 °C'] },
    log: 'both',
    caption:
      'Silicon bronze in sand, face and sand both counted, a line for each mould temperature. The lines keep their distance: a warm mould multiplies the time of a thin section and of a thick one alike.',
  },
  {
    name: 'flow-time',
    title: 'How long it keeps flowing',
    formula: 'filling/flow-time',
    find: 't',
    against: 'M',
    from: '0.3 mm',
    to: '3 mm',
    at: '0.43 mm',
    by: { input: 'T_m', values: ['20 °C', '150 °C', '300 °C', '450 °C'] },
    log: 'both',
    caption: 'Silicon bronze that stops when 30 % is solid. The webs of the lamp shield stand near 0.43 mm.',
  },
  {
    name: 'speed-by-head',
    title: 'How fast it goes in',
    formula: 'filling/velocity',
    find: 'v',
    against: 'h',
    from: '10 mm',
    to: '300 mm',
    at: '40 mm',
    given: { p_cap: '0 kPa' },
    by: {
      input: 'dp',
      values: ['0 kPa', '10 kPa', '20 kPa', '35 kPa'],
      labels: ['no suction', '10 kPa', '20 kPa', '35 kPa'],
    },
    caption:
      'Silicon bronze into a wide gate, by head and by suction at the cavity. A little suction is worth a tall sprue.',
  },
  {
    name: 'flow-length',
    title: 'How far it runs',
    formula: 'filling/flow-length',
    find: 'l',
    against: 'v',
    from: '0.1 m/s',
    to: '2 m/s',
    at: '0.5 m/s',
    by: { input: 'M', values: ['0.4 mm', '0.7 mm', '1 mm', '1.5 mm'] },
    log: 'both',
    caption: 'Silicon bronze in a mould at 150 °C, when the face decides; a line for each modulus.',
  },
  {
    name: 'enter',
    title: 'What it takes to enter a slot',
    formula: 'filling/entry-pressure',
    find: 'p_cap',
    against: 'a',
    from: '0.3 mm',
    to: '4 mm',
    at: '1.4 mm',
    given: { c: '20 mm' },
    by: {
      input: 'gamma',
      values: ['0.55 N/m', '0.9 N/m', '1.2 N/m'],
      labels: ['0.55 N/m, tin', '0.9 N/m, aluminium', '1.2 N/m, bronze'],
    },
    log: 'both',
    caption: 'Pressure that surface tension resists with, for a slot 20 mm wide that is not wetted.',
  },
  {
    name: 'edge',
    title: 'How sharp an edge comes out',
    formula: 'filling/edge-radius',
    find: 'r',
    against: 'dp',
    from: '0 kPa',
    to: '60 kPa',
    at: '15 kPa',
    by: { input: 'h', values: ['20 mm', '60 mm', '150 mm'] },
    log: 'y',
    caption:
      'Bronze, by suction and head. Head alone leaves a round edge; suction sharpens it, the first 15 kPa most.',
  },
  {
    name: 'gauge',
    title: 'The most a vacuum gauge can show, by altitude',
    formula: 'vacuum/ambient',
    find: 'p',
    against: 'z',
    from: '0 m',
    to: '3500 m',
    at: '600 m',
    unit: 'inHg',
    caption:
      'All the air there is. A gauge cannot show more than this, and a pump that leaves a tenth shows a tenth less. The weather moves it by an inch either way.',
  },
  {
    name: 'suction-head',
    title: 'Suction as a height of metal',
    formula: 'vacuum/head',
    find: 'h',
    against: 'dp',
    from: '0 kPa',
    to: '60 kPa',
    at: '20 kPa',
    by: {
      input: 'rho',
      values: ['2400 kg/m³', '7520 kg/m³', '9300 kg/m³', '17000 kg/m³'],
      labels: ['aluminium', 'bronze', 'silver', 'gold 18 ct'],
    },
    caption: 'What sprue would push as hard.',
  },
  {
    name: 'safe-suction',
    title: 'Suction a cake of sand stands',
    formula: 'sand/cake-bending',
    find: 'dp',
    against: 's',
    from: '15 mm',
    to: '120 mm',
    at: '40 mm',
    given: { sigma: '20 kPa' },
    by: { input: 'd', values: ['15 mm', '25 mm', '40 mm'] },
    log: 'both',
    caption:
      'Span between supports and thickness of the cake, for 20 kPa in the sand: a third of what clay-bonded sand breaks at, because that is a guess. Test yours.',
  },
  {
    name: 'window',
    title: 'Seconds in hand',
    formula: 'melting/pour-window',
    find: 't',
    against: 'm',
    from: '30 g',
    to: '1 kg',
    at: '100 g',
    by: { input: 'T_f', values: ['1060 °C', '1090 °C', '1120 °C', '1150 °C'] },
    log: 'both',
    caption:
      'Bronze that must be above 1040 °C when it goes in, by charge and by how hot it leaves the furnace.',
  },
  {
    name: 'hole',
    title: 'The hole where nothing feeds',
    formula: 'feeding/none',
    find: 'D',
    against: 'V',
    from: '0.1 cm³',
    to: '50 cm³',
    at: '1 cm³',
    by: {
      input: 'f',
      values: ['3 %', '4.5 %', '6.5 %'],
      labels: ['3 %', '4.5 %, bronze', '6.5 %, aluminium'],
    },
    log: 'both',
    caption: 'If all that a lump loses gathers in one round hole. It may spread as fine pores instead.',
  },
  {
    name: 'boil',
    title: 'Where water boils',
    formula: 'investment/vapour-pressure',
    find: 'p',
    against: 'T',
    from: '5 °C',
    to: '60 °C',
    at: '22 °C',
    unit: 'kPa',
    log: 'y',
    caption:
      'Absolute pressure at which a slurry of this temperature boils. Below it the pump draws steam, and the gauge stalls.',
  },
  {
    name: 'radiant',
    title: 'Heat on the hand',
    formula: 'safety/radiant',
    find: 'q',
    against: 'd',
    from: '100 mm',
    to: '1500 mm',
    at: '400 mm',
    by: { input: 'r', values: ['20 mm', '30 mm', '50 mm', '80 mm'] },
    log: 'both',
    caption:
      'From the mouth of a crucible at 1100 °C, by distance and by the radius of the mouth. How long bare skin stands it is a card of its own. It is no permission.',
  },
];

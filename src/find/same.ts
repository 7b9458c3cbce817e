/**
 * Quantities that are one thing on the bench though their formulas name them apart. The first name stands for
 * all. `chapter/name:symbol` picks one symbol of one formula where its name alone would be too wide.
 */
export const same: readonly (readonly string[])[] = [
  [
    'head of metal',
    'head of metal above the entry',
    'head of metal above the opening',
    'head of metal above the edge',
    'head of metal above the corner',
  ],
  ['modulus', 'modulus of the casting'],
  ['time to fill', 'time to fill the section'],
  ['mass of the part', 'mass of the parts'],
  ['charge to weigh out', 'charge', 'charge weighed out'],
  ['mass of the melt', 'melt'],
  ['volume of the part', 'charge/volume-by-immersion:V', 'volume of the casting', 'volume of the cavity'],
  ['area of the gate or choke', 'area of the choke', 'area of the gate', 'area of the opening'],
  ['air pressure at the workshop', 'pressure of the air around, absolute'],
  ['suction the gauge shows', 'vacuum the gauge shows, below ambient', 'suction at the plate'],
  [
    'suction at the cavity',
    'pressure in the cavity below the ambient',
    'pressure difference at the cavity',
    'pressure above the metal less pressure in the cavity',
    'suction in the cavity',
  ],
  ['pressure needed to enter', 'pressure needed to enter the opening'],
  ['latent heat of freezing', 'latent heat'],
  ['specific heat of the liquid metal', 'specific heat of the liquid'],
  ['specific heat of the solid metal', 'specific heat of the solid'],
  ['density of the solid metal', 'density of the solid metal at 20 °C'],
  ['heat diffusivity of the mould', 'heat diffusivity'],
  ['thermal diffusivity of the mould', 'thermal diffusivity', 'thermal diffusivity of the sand'],
  ['conductivity of the mould', 'conductivity'],
  ['mould temperature', 'mould temperature needed', 'temperature of the mould before'],
  ['contraction allowance', 'contraction allowance built into the pattern'],
  ['permeability of the sand', 'permeability'],
  ['diameter of the feeder', 'feeding/feeder-volume:D'],
  ['radiant heat on the skin', 'radiant heat'],
  ['heat metal and crucible must take up', 'heat taken up'],
  ['surface tension', 'surface tension of the liquid metal'],
  ['contact angle', 'contact angle of metal on sand'],
  ['hydraulic diameter', 'diameter of the channel'],
  ['density of the casting', 'inspection/density:rho'],
];

/** Names too wide to join two formulas by: each stands for a quantity of its own formula only. */
export const wide: readonly string[] = [
  'time',
  'step',
  'diameter',
  'height',
  'density',
  'temperature at the start',
  'temperature at the end',
  'temperature of the water',
];

import type { Output } from '../../core/model.ts';
import type { UnitSymbol } from '../../core/units.ts';
import { mostSections } from './inputs-part.ts';

const output = (name: string, unit: UnitSymbol, show?: UnitSymbol): Output => ({
  name,
  unit,
  ...(show && { show }),
});

/** For each row of sections, as entered, from one. */
const ofSection: Readonly<Record<string, Output>> = {
  modulus: output('modulus', 'm', 'mm'),
  freeze: output('time to freeze', 's'),
  'freeze.soonest': output('freezes at the soonest', 's'),
  'freeze.latest': output('freezes at the latest', 's'),
  'freeze.sand': output('freezes on flat sand in perfect contact', 's'),
  resists: output('pressure to enter', 'Pa', 'kPa'),
  speed: output('speed of the front', 'm/s'),
  arrives: output('metal arrives at', 'K', '°C'),
  flows: output('time it keeps flowing', 's'),
  'flows.latest': output('keeps flowing at the longest', 's'),
  fills: output('time to fill', 's'),
  reach: output('length it would run', 'm', 'mm'),
  margin: output('flow time over fill time', '1'),
};

const sectionOutputs = Object.fromEntries(
  Array.from({ length: mostSections }, (_, row) =>
    Object.entries(ofSection).map(([field, { name, ...rest }]): [string, Output] => [
      `sections.${row + 1}.${field}`,
      { name: `Section ${row + 1}: ${name}`, ...rest },
    ]),
  ).flat(),
);

/** In the order the decisions are taken. */
export const outputs: Readonly<Record<string, Output>> = {
  'pattern.length': output('Length of the pattern', 'm', 'mm'),
  'part.volume': output('Volume of one casting', 'm³', 'cm³'),
  'part.mass': output('Mass of one casting', 'kg', 'g'),
  'part.modulus': output('Modulus of the whole casting', 'm', 'mm'),
  'sprue.mass': output('Mass of sprue, cup and gates', 'kg', 'g'),
  charge: output('Charge to weigh out', 'kg', 'g'),
  yield: output('Yield', '1', '%'),
  'crucible.holds': output('What the crucible holds', 'kg', 'g'),
  ...sectionOutputs,
  freezing: output('Freezing temperature', 'K', '°C'),
  'mould.diffusivity': output('Heat diffusivity of the mould', 'J·s^-½/(m²·K)'),
  'mould.needed': output('Mould temperature the tightest section would need', 'K', '°C'),
  ambient: output('Air pressure here', 'Pa', 'kPa'),
  'gauge.absolute': output('Absolute pressure behind the gauge', 'Pa', 'kPa'),
  'gauge.reading': output('What the gauge must read', 'Pa', 'inHg'),
  suction: output('Suction at the cavity', 'Pa', 'kPa'),
  'suction.as-head': output('The suction as a height of metal', 'm', 'mm'),
  'head.left': output('Head left at the far end', 'm', 'mm'),
  pressure: output('Pressure of the metal at the far end', 'Pa', 'kPa'),
  gas: output('Gas pressing back', 'Pa', 'kPa'),
  'gas.worst': output('Gas pressing back, all the water counted', 'Pa', 'kPa'),
  'steam.water': output('Water in the sand heated past boiling', 'kg', 'mg'),
  'steam.volume': output('Steam it makes', 'm³', 'L'),
  'pour.flow': output('Flow as you pour it', 'm³/s', 'cm³/s'),
  flow: output('Flow into one casting', 'm³/s', 'cm³/s'),
  'gate.speed': output('Speed at the gate', 'm/s'),
  'gate.critical': output('Critical speed', 'm/s'),
  edge: output('Sharpest edge', 'm', 'mm'),
  corner: output('Sharpest corner', 'm', 'mm'),
  'suction.force': output('Force of the suction on the flask', 'N'),
  'sand.bending': output('Bending stress in the sand', 'Pa', 'kPa'),
  'sand.shear': output('Shear stress at the rim', 'Pa', 'kPa'),
  lift: output('Lift on the cope', 'N'),
  'cope.needed': output('Weight to lay on', 'kg'),
  penetration: output('Pressure that drives metal into the sand', 'Pa', 'kPa'),
  shrinkage: output('Volume lost', 'm³', 'mm³'),
  pore: output('Hole left in the heaviest place', 'm', 'mm'),
  'feeder.modulus-needed': output('Modulus the feeder needs', 'm', 'mm'),
  'feeder.volume-needed': output('Volume the feeder needs', 'm³', 'cm³'),
  'chain.carry': output('Lost on the way to the mould', 'ΔK', 'Δ°C'),
  'chain.cup': output('Temperature in the cup', 'K', '°C'),
  'chain.gate': output('Temperature at the gate', 'K', '°C'),
  'melt.energy': output('Heat to melt', 'J', 'kJ'),
  'melt.time': output('Time to melt', 's', 'min'),
  'melt.window': output('Seconds in hand', 's'),
  release: output('Hold the suction for', 's'),
  last: output('The last to freeze, after', 's'),
  'end.temperature': output('Metal and mould together, in the end', 'K', '°C'),
  cool: output('From 300 °C to the hand', 's', 'min'),
  'weigh.water': output('A sound casting weighs in water', 'kg', 'g'),
};

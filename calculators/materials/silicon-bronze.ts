import { defineMaterial } from '../core/material.ts';

export const siliconBronze = defineMaterial({
  id: 'silicon-bronze',
  role: 'metal',
  name: 'Silicon bronze, 4 % silicon',
  words: ['C87300', 'C87200', 'CuSi4Mn1', 'art bronze'],
  composition: 'Cu 95, Si 4, Mn 1',
  description: 'The art founder’s bronze: no zinc or tin, pours cleanly under a thin glassy skin.',
  properties: {
    'density.solid': [
      {
        at: '20 °C',
        value: '8360 kg/m³',
        spread: '1 %',
        source: { key: 'copper-development', at: 'C87300 data sheet, read in a document copy', how: 'read' },
      },
    ],
    'density.liquid': [
      {
        at: 'liquid at the liquidus',
        value: '7520 kg/m³',
        spread: '4 %',
        source: {
          key: 'estimate',
          at: 'solid density times copper’s liquid-to-solid ratio, 0.900',
          how: 'estimate',
        },
      },
    ],
    'heat.solid': [
      {
        at: '20 °C',
        value: '377 J/(kg·K)',
        spread: '12 %',
        source: { key: 'copper-development', at: 'C87200 data, read in a founder’s copy', how: 'read' },
        note: 'Rises on the way to the melting point; the spread covers the mean over the whole cooling.',
      },
    ],
    'heat.liquid': [
      {
        at: 'liquid',
        value: '520 J/(kg·K)',
        spread: '10 %',
        source: { key: 'estimate', at: 'mass average of the liquid elements', how: 'estimate' },
      },
    ],
    latent: [
      {
        at: 'fusion',
        value: '150 kJ/kg',
        spread: '39 %',
        source: { key: 'estimate', at: 'middle of the two estimates below, spread to both', how: 'estimate' },
        note: 'No measurement was found. The copper fraction gives 200, assessed Gibbs functions 108; the truth may lie anywhere between, and this is the largest spread in a freezing time.',
      },
      {
        at: 'fusion',
        value: '200 kJ/kg',
        spread: '37 %',
        source: { key: 'estimate', at: 'copper’s latent heat times the copper fraction', how: 'estimate' },
      },
      {
        at: 'liquid to solid at 940 °C',
        value: '108 kJ/kg',
        spread: '37 %',
        source: {
          key: 'cost-507',
          at: 'Cu–Si Gibbs functions, enthalpy difference at 940 °C',
          how: 'estimate',
        },
      },
    ],
    solidus: [
      {
        at: 'C87200',
        value: '860 °C',
        spread: '46 °C',
        source: { key: 'copper-development', at: 'C87200 data, read in a founder’s copy', how: 'read' },
        note: 'Sister alloy C87200. An ingot sheet gives 866 °C, the equilibrium diagram 906 °C, the C87300 sheet 821 °C: the low figure is also quoted for the zinc-bearing silicon brass, so it is not put first. The spread covers them all.',
      },
      {
        at: 'C87300',
        value: '821 °C',
        spread: '15 °C',
        source: { key: 'copper-development', at: 'C87300 data sheet, read in a document copy', how: 'read' },
      },
      {
        at: 'ingot',
        value: '866 °C',
        spread: '15 °C',
        source: {
          key: 'makers-data',
          at: 'ingot sheet for C87300, quoted in a founders’ forum',
          how: 'read',
        },
      },
      {
        at: 'equilibrium, 4 % silicon',
        value: '906 °C',
        spread: '15 °C',
        source: {
          key: 'cost-507',
          at: 'assessed Gibbs functions read in an open database, solved for the temperature',
          how: 'estimate',
        },
      },
    ],
    liquidus: [
      {
        at: 'C87300',
        value: '971 °C',
        spread: '12 °C',
        source: { key: 'copper-development', at: 'C87300 data sheet, read in a document copy', how: 'read' },
      },
      {
        at: 'ingot',
        value: '977 °C',
        spread: '10 °C',
        source: {
          key: 'makers-data',
          at: 'ingot sheet for C87300, quoted in a founders’ forum',
          how: 'read',
        },
      },
      {
        at: 'equilibrium, 4 % silicon',
        value: '983 °C',
        spread: '10 °C',
        source: {
          key: 'cost-507',
          at: 'assessed Gibbs functions read in an open database, solved for the temperature',
          how: 'estimate',
        },
      },
      {
        at: 'zinc-bearing silicon brass',
        value: '916 °C',
        spread: '10 °C',
        source: { key: 'copper-development', at: 'cast alloy data, C87500', how: 'memory' },
        note: 'Sometimes printed for C87300 too; the sheets that were read do not support it.',
      },
    ],
    'conductivity.solid': [
      {
        at: 'solid, just below the solidus',
        value: '55 W/(m·K)',
        spread: '57 %',
        source: { key: 'estimate', at: 'Wiedemann–Franz, from an assumed resistivity', how: 'estimate' },
        note: 'What a freezing calculation needs; the value at room temperature is below.',
      },
      {
        at: '20 °C',
        value: '28.4 W/(m·K)',
        spread: '10 %',
        source: { key: 'copper-development', at: 'C87200 data, read in a founder’s copy', how: 'read' },
      },
    ],
    'conductivity.liquid': [
      {
        at: 'liquid at the liquidus',
        value: '45 W/(m·K)',
        spread: '44 %',
        source: { key: 'estimate', at: 'Wiedemann–Franz, from an assumed resistivity', how: 'estimate' },
      },
    ],
    viscosity: [
      {
        at: 'liquid at the liquidus',
        value: '4 mPa·s',
        spread: '50 %',
        source: {
          key: 'estimate',
          at: 'from the pure metal and the trend in Iida and Guthrie',
          how: 'estimate',
        },
      },
    ],
    'surface-tension': [
      {
        at: 'liquid at the liquidus',
        value: '1.2 N/m',
        spread: '17 %',
        source: {
          key: 'estimate',
          at: 'from the pure metals; oxygen, phosphorus, lead and tin lower it',
          how: 'estimate',
        },
      },
    ],
    'contact-angle': [
      {
        at: 'liquid on sand or investment',
        value: '130 deg',
        spread: '12 %',
        source: {
          key: 'estimate',
          at: 'does not wet; 110 to 150 degrees for clean and oxidised metals',
          how: 'estimate',
        },
      },
    ],
    'shrinkage.freezing': [
      {
        at: 'copper alloys',
        value: '4.5 %',
        spread: '22 %',
        source: { key: 'kalpakjian', at: 'Table 10.1, taken as for other copper alloys', how: 'estimate' },
      },
    ],
    'contraction.liquid': [
      {
        at: 'liquid, each 100 K of cooling',
        value: '1.02 %',
        spread: '15 %',
        source: { key: 'estimate', at: 'mass average of the elements’ slopes', how: 'estimate' },
      },
    ],
    'contraction.free': [
      {
        at: '860 to 20 °C',
        value: '1.68 %',
        spread: '10 %',
        source: { key: 'estimate', at: 'mean expansion times the fall in temperature', how: 'estimate' },
      },
    ],
    'contraction.pattern': [
      {
        at: 'C87200, sand',
        value: '2.08 %',
        spread: '25 %',
        source: { key: 'copper-development', at: 'C87200 data, read in a founder’s copy', how: 'read' },
        note: 'More than the metal’s own free contraction of 1.7 %: check it on a test bar.',
      },
    ],
    'pour.lowest': [
      {
        at: 'pouring, light castings',
        value: '1093 °C',
        spread: '25 °C',
        source: {
          key: 'makers-data',
          at: 'ingot sheet for C87300, quoted in a founders’ forum',
          how: 'read',
        },
      },
      {
        at: 'pouring, heavy castings',
        value: '1010 °C',
        spread: '25 °C',
        source: {
          key: 'makers-data',
          at: 'ingot sheet for C87300, quoted in a founders’ forum',
          how: 'read',
        },
      },
      {
        at: 'pouring, thin sections',
        value: '1100 °C',
        spread: '30 °C',
        source: { key: 'asm-15', at: 'pouring tables of copper alloys', how: 'memory' },
      },
    ],
    'pour.highest': [
      {
        at: 'pouring, light castings',
        value: '1177 °C',
        spread: '25 °C',
        source: {
          key: 'makers-data',
          at: 'ingot sheet for C87300, quoted in a founders’ forum',
          how: 'read',
        },
      },
      {
        at: 'pouring, heavy castings',
        value: '1066 °C',
        spread: '25 °C',
        source: {
          key: 'makers-data',
          at: 'ingot sheet for C87300, quoted in a founders’ forum',
          how: 'read',
        },
      },
      {
        at: 'pouring, thin sections',
        value: '1200 °C',
        spread: '30 °C',
        source: { key: 'asm-15', at: 'pouring tables of copper alloys', how: 'memory' },
      },
    ],
    'critical-solid': [
      {
        at: 'flow stops',
        value: '0.3 1',
        spread: '60 %',
        source: {
          key: 'flemings',
          at: 'ch. 7, fluidity: 0.2 to 0.5 for alloys with a long freezing range, most of the latent heat for pure metals and eutectics',
          how: 'memory',
        },
      },
    ],
    'loss.melting': [
      {
        at: 'small melt, one heat',
        value: '1.5 %',
        spread: '70 %',
        source: {
          key: 'trade-practice',
          at: 'weigh in and out over several heats for your own figure',
          how: 'common practice',
        },
      },
    ],
    emissivity: [
      {
        at: 'silica skin',
        value: '0.3 1',
        spread: '131 %',
        source: { key: 'estimate', at: 'between clean base metal and oxide', how: 'estimate' },
      },
    ],
  },
  cautions: [
    'Everything that touches the melt is dry and warm: trapped water throws the metal.',
    'Fume of copper and a little manganese: extraction at the crucible and at the pour.',
    'The silica skin folds in if the metal falls or splashes: fill quietly.',
    'Hot short: do not quench it while it is red.',
    'Never melt springs or tools of copper-beryllium, plated scrap or unknown scrap in place of this alloy.',
  ],
});

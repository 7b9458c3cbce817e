import { defineMaterial } from '../core/material.ts';

export const water = defineMaterial({
  id: 'water',
  role: 'fluid',
  name: 'Water',
  words: ['H2O', 'steam'],
  description: 'Clean water at one atmosphere: for immersion weighing, slurries and steam.',
  properties: {
    'density.liquid': [
      {
        at: '20 °C',
        value: '998.204 kg/m³',
        spread: '0.01 %',
        source: {
          key: 'kell-water',
          at: 'equation for one atmosphere, evaluated; coefficients read in a web tool',
          how: 'read',
        },
      },
      {
        at: '0 °C',
        value: '999.840 kg/m³',
        spread: '0.01 %',
        source: {
          key: 'kell-water',
          at: 'equation for one atmosphere, evaluated; coefficients read in a web tool',
          how: 'read',
        },
      },
      {
        at: '4 °C',
        value: '999.972 kg/m³',
        spread: '0.01 %',
        source: {
          key: 'kell-water',
          at: 'equation for one atmosphere, evaluated; coefficients read in a web tool',
          how: 'read',
        },
      },
      {
        at: '5 °C',
        value: '999.964 kg/m³',
        spread: '0.01 %',
        source: {
          key: 'kell-water',
          at: 'equation for one atmosphere, evaluated; coefficients read in a web tool',
          how: 'read',
        },
      },
      {
        at: '10 °C',
        value: '999.700 kg/m³',
        spread: '0.01 %',
        source: {
          key: 'kell-water',
          at: 'equation for one atmosphere, evaluated; coefficients read in a web tool',
          how: 'read',
        },
      },
      {
        at: '12 °C',
        value: '999.497 kg/m³',
        spread: '0.01 %',
        source: {
          key: 'kell-water',
          at: 'equation for one atmosphere, evaluated; coefficients read in a web tool',
          how: 'read',
        },
      },
      {
        at: '14 °C',
        value: '999.244 kg/m³',
        spread: '0.01 %',
        source: {
          key: 'kell-water',
          at: 'equation for one atmosphere, evaluated; coefficients read in a web tool',
          how: 'read',
        },
      },
      {
        at: '15 °C',
        value: '999.100 kg/m³',
        spread: '0.01 %',
        source: {
          key: 'kell-water',
          at: 'equation for one atmosphere, evaluated; coefficients read in a web tool',
          how: 'read',
        },
      },
      {
        at: '16 °C',
        value: '998.943 kg/m³',
        spread: '0.01 %',
        source: {
          key: 'kell-water',
          at: 'equation for one atmosphere, evaluated; coefficients read in a web tool',
          how: 'read',
        },
      },
      {
        at: '18 °C',
        value: '998.596 kg/m³',
        spread: '0.01 %',
        source: {
          key: 'kell-water',
          at: 'equation for one atmosphere, evaluated; coefficients read in a web tool',
          how: 'read',
        },
      },
      {
        at: '22 °C',
        value: '997.771 kg/m³',
        spread: '0.01 %',
        source: {
          key: 'kell-water',
          at: 'equation for one atmosphere, evaluated; coefficients read in a web tool',
          how: 'read',
        },
      },
      {
        at: '24 °C',
        value: '997.297 kg/m³',
        spread: '0.01 %',
        source: {
          key: 'kell-water',
          at: 'equation for one atmosphere, evaluated; coefficients read in a web tool',
          how: 'read',
        },
      },
      {
        at: '25 °C',
        value: '997.045 kg/m³',
        spread: '0.01 %',
        source: {
          key: 'kell-water',
          at: 'equation for one atmosphere, evaluated; coefficients read in a web tool',
          how: 'read',
        },
      },
      {
        at: '26 °C',
        value: '996.784 kg/m³',
        spread: '0.01 %',
        source: {
          key: 'kell-water',
          at: 'equation for one atmosphere, evaluated; coefficients read in a web tool',
          how: 'read',
        },
      },
      {
        at: '28 °C',
        value: '996.234 kg/m³',
        spread: '0.01 %',
        source: {
          key: 'kell-water',
          at: 'equation for one atmosphere, evaluated; coefficients read in a web tool',
          how: 'read',
        },
      },
      {
        at: '30 °C',
        value: '995.647 kg/m³',
        spread: '0.01 %',
        source: {
          key: 'kell-water',
          at: 'equation for one atmosphere, evaluated; coefficients read in a web tool',
          how: 'read',
        },
      },
      {
        at: '35 °C',
        value: '994.032 kg/m³',
        spread: '0.01 %',
        source: {
          key: 'kell-water',
          at: 'equation for one atmosphere, evaluated; coefficients read in a web tool',
          how: 'read',
        },
      },
      {
        at: '40 °C',
        value: '992.216 kg/m³',
        spread: '0.01 %',
        source: {
          key: 'kell-water',
          at: 'equation for one atmosphere, evaluated; coefficients read in a web tool',
          how: 'read',
        },
      },
    ],
    'heat.liquid': [
      {
        at: '20 °C',
        value: '4182 J/(kg·K)',
        spread: '0.2 %',
        source: { key: 'iapws-95', at: 'formulation for ordinary water', how: 'memory' },
      },
    ],
    'latent.vapour': [
      {
        at: '100 °C',
        value: '2257 kJ/kg',
        spread: '0.2 %',
        source: { key: 'iapws-95', at: 'formulation for ordinary water', how: 'memory' },
      },
    ],
    boils: [
      {
        at: '101.325 kPa',
        value: '99.97 °C',
        spread: '0.05 °C',
        source: { key: 'iapws-95', at: 'formulation for ordinary water', how: 'memory' },
      },
    ],
    'conductivity.liquid': [
      {
        at: '20 °C',
        value: '0.598 W/(m·K)',
        spread: '1.5 %',
        source: { key: 'incropera', at: 'Table A.6, saturated water', how: 'memory' },
      },
    ],
    viscosity: [
      {
        at: '20 °C',
        value: '1.002 mPa·s',
        spread: '0.5 %',
        source: { key: 'crc-handbook', at: 'viscosity of water', how: 'memory' },
      },
    ],
    'surface-tension': [
      {
        at: '20 °C',
        value: '0.0728 N/m',
        spread: '0.5 %',
        source: { key: 'iapws-95', at: 'release on surface tension', how: 'memory' },
      },
    ],
  },
  cautions: [
    'Water under molten metal explodes as steam: it grows about 1700 times.',
    'Cool running water for 20 minutes treats a burn; keep the tap outside the melt zone.',
  ],
});

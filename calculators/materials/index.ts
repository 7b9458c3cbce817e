// Written by `npm run index` from the files beside it; change those and run it again.
import type { Material } from '../core/material.ts';
import { air } from './air.ts';
import { aluminiumBronze } from './aluminium-bronze.ts';
import { aluminiumSilicon12 } from './aluminium-silicon-12.ts';
import { aluminiumSilicon7 } from './aluminium-silicon-7.ts';
import { brass6040 } from './brass-60-40.ts';
import { brass7030 } from './brass-70-30.ts';
import { brassFlask } from './brass-flask.ts';
import { castableResin } from './castable-resin.ts';
import { castingWax } from './casting-wax.ts';
import { clayBondedSand } from './clay-bonded-sand.ts';
import { clayGraphiteCrucible } from './clay-graphite-crucible.ts';
import { copper } from './copper.ts';
import { drySilicaSand } from './dry-silica-sand.ts';
import { fineGold } from './fine-gold.ts';
import { fineSilver } from './fine-silver.ts';
import { fusedSilicaCrucible } from './fused-silica-crucible.ts';
import { gold18ct } from './gold-18ct.ts';
import { graphiteCrucible } from './graphite-crucible.ts';
import { graphiteMould } from './graphite-mould.ts';
import { greenSand } from './green-sand.ts';
import { gypsumInvestment } from './gypsum-investment.ts';
import { leadedGunmetal } from './leaded-gunmetal.ts';
import { limeWood } from './lime-wood.ts';
import { mahogany } from './mahogany.ts';
import { maple } from './maple.ts';
import { oilBondedSand } from './oil-bonded-sand.ts';
import { pewter } from './pewter.ts';
import { phosphateInvestment } from './phosphate-investment.ts';
import { pla } from './pla.ts';
import { plaster } from './plaster.ts';
import { resinBondedSand } from './resin-bonded-sand.ts';
import { siliconBronze } from './silicon-bronze.ts';
import { steelMould } from './steel-mould.ts';
import { sterlingSilver } from './sterling-silver.ts';
import { tin } from './tin.ts';
import { tinBronze10 } from './tin-bronze-10.ts';
import { tinBronze12 } from './tin-bronze-12.ts';
import { water } from './water.ts';
import { whitePine } from './white-pine.ts';
import { zincAlloy } from './zinc-alloy.ts';

export const materials: Readonly<Record<string, Material>> = {
  air,
  'aluminium-bronze': aluminiumBronze,
  'aluminium-silicon-12': aluminiumSilicon12,
  'aluminium-silicon-7': aluminiumSilicon7,
  'brass-60-40': brass6040,
  'brass-70-30': brass7030,
  'brass-flask': brassFlask,
  'castable-resin': castableResin,
  'casting-wax': castingWax,
  'clay-bonded-sand': clayBondedSand,
  'clay-graphite-crucible': clayGraphiteCrucible,
  copper,
  'dry-silica-sand': drySilicaSand,
  'fine-gold': fineGold,
  'fine-silver': fineSilver,
  'fused-silica-crucible': fusedSilicaCrucible,
  'gold-18ct': gold18ct,
  'graphite-crucible': graphiteCrucible,
  'graphite-mould': graphiteMould,
  'green-sand': greenSand,
  'gypsum-investment': gypsumInvestment,
  'leaded-gunmetal': leadedGunmetal,
  'lime-wood': limeWood,
  mahogany,
  maple,
  'oil-bonded-sand': oilBondedSand,
  pewter,
  'phosphate-investment': phosphateInvestment,
  pla,
  plaster,
  'resin-bonded-sand': resinBondedSand,
  'silicon-bronze': siliconBronze,
  'steel-mould': steelMould,
  'sterling-silver': sterlingSilver,
  tin,
  'tin-bronze-10': tinBronze10,
  'tin-bronze-12': tinBronze12,
  water,
  'white-pine': whitePine,
  'zinc-alloy': zincAlloy,
};

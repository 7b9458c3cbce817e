// Written by `npm run index` from the files beside it; change those and run it again.
import type { Model } from '../core/model.ts';
import { liquidus as chargeLiquidus } from './liquidus.ts';
import { makeUp as chargeMakeUp } from './make-up.ts';
import { front as fillingFront } from './front.ts';
import { temperatureChain as fillingTemperatureChain } from './temperature-chain.ts';
import { sectionRace as freezingSectionRace } from './section-race.ts';
import { transient as freezingTransient } from './transient.ts';
import { calibrate as inspectionCalibrate } from './calibrate.ts';
import { compare as inspectionCompare } from './compare.ts';
import { size as inspectionSize } from './size.ts';
import { boil as investmentBoil } from './boil.ts';
import { centreLag as investmentCentreLag } from './centre-lag.ts';
import { flaskTemperature as investmentFlaskTemperature } from './flask-temperature.ts';
import { mix as investmentMix } from './mix.ts';
import { schedule as investmentSchedule } from './schedule.ts';
import { timeBudget as investmentTimeBudget } from './time-budget.ts';
import { primitives as patternPrimitives } from './primitives.ts';
import { rawSizeOfCasting as patternRawSize } from './raw-size.ts';
import { tolerance as patternTolerance } from './tolerance.ts';
import { pourPlan } from './pour-plan.ts';
import { sandBulk } from './sand-bulk.ts';
import { grainFineness as sandGrainFineness } from './grain-fineness.ts';
import { warmThrough as sandWarmThrough } from './warm-through.ts';

export const models: Readonly<Record<string, Model>> = {
  'charge/liquidus': chargeLiquidus,
  'charge/make-up': chargeMakeUp,
  'filling/front': fillingFront,
  'filling/temperature-chain': fillingTemperatureChain,
  'freezing/section-race': freezingSectionRace,
  'freezing/transient': freezingTransient,
  'inspection/calibrate': inspectionCalibrate,
  'inspection/compare': inspectionCompare,
  'inspection/size': inspectionSize,
  'investment/boil': investmentBoil,
  'investment/centre-lag': investmentCentreLag,
  'investment/flask-temperature': investmentFlaskTemperature,
  'investment/mix': investmentMix,
  'investment/schedule': investmentSchedule,
  'investment/time-budget': investmentTimeBudget,
  'pattern/primitives': patternPrimitives,
  'pattern/raw-size': patternRawSize,
  'pattern/tolerance': patternTolerance,
  'pour-plan': pourPlan,
  'sand/bulk': sandBulk,
  'sand/grain-fineness': sandGrainFineness,
  'sand/warm-through': sandWarmThrough,
};

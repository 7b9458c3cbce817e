// Written by `npm run index` from the files beside it; change those and run it again.
import type { Formula } from '../core/formula.ts';
import { crucibleFit as chargeCrucibleFit } from './charge/crucible-fit.ts';
import { deoxidiser as chargeDeoxidiser } from './charge/deoxidiser.ts';
import { dilute as chargeDilute } from './charge/dilute.ts';
import { massFromPattern as chargeMassFromPattern } from './charge/mass-from-pattern.ts';
import { massFromVolume as chargeMassFromVolume } from './charge/mass-from-volume.ts';
import { total as chargeTotal } from './charge/total.ts';
import { volumeByImmersion as chargeVolumeByImmersion } from './charge/volume-by-immersion.ts';
import { castingYield as chargeYield } from './charge/yield.ts';
import { button as feedingButton } from './feeding/button.ts';
import { chill as feedingChill } from './feeding/chill.ts';
import { chillMass as feedingChillMass } from './feeding/chill-mass.ts';
import { demand as feedingDemand } from './feeding/demand.ts';
import { distance as feedingDistance } from './feeding/distance.ts';
import { distanceBar as feedingDistanceBar } from './feeding/distance-bar.ts';
import { feederByVolume as feedingFeederByVolume } from './feeding/feeder-by-volume.ts';
import { feederSize as feedingFeederSize } from './feeding/feeder-size.ts';
import { feederVolume as feedingFeederVolume } from './feeding/feeder-volume.ts';
import { freezingRatio as feedingFreezingRatio } from './feeding/freezing-ratio.ts';
import { gradient as feedingGradient } from './feeding/gradient.ts';
import { junction as feedingJunction } from './feeding/junction.ts';
import { junctionCorner as feedingJunctionCorner } from './feeding/junction-corner.ts';
import { junctionTee as feedingJunctionTee } from './feeding/junction-tee.ts';
import { modulusChain as feedingModulusChain } from './feeding/modulus-chain.ts';
import { neck as feedingNeck } from './feeding/neck.ts';
import { none as feedingNone } from './feeding/none.ts';
import { volumeRule as feedingVolumeRule } from './feeding/volume-rule.ts';
import { backPressure as fillingBackPressure } from './filling/back-pressure.ts';
import { choke as fillingChoke } from './filling/choke.ts';
import { cornerRadius as fillingCornerRadius } from './filling/corner-radius.ts';
import { edgeRadius as fillingEdgeRadius } from './filling/edge-radius.ts';
import { effectiveHead as fillingEffectiveHead } from './filling/effective-head.ts';
import { entryHead as fillingEntryHead } from './filling/entry-head.ts';
import { entryPressure as fillingEntryPressure } from './filling/entry-pressure.ts';
import { entryPressureRound as fillingEntryPressureRound } from './filling/entry-pressure-round.ts';
import { fallSpeed as fillingFallSpeed } from './filling/fall-speed.ts';
import { fillTime as fillingFillTime } from './filling/fill-time.ts';
import { fillTimeBottom as fillingFillTimeBottom } from './filling/fill-time-bottom.ts';
import { fillTimeTop as fillingFillTimeTop } from './filling/fill-time-top.ts';
import { flowLength as fillingFlowLength } from './filling/flow-length.ts';
import { flowLengthSand as fillingFlowLengthSand } from './filling/flow-length-sand.ts';
import { flowTime as fillingFlowTime } from './filling/flow-time.ts';
import { flowTimeInterface as fillingFlowTimeInterface } from './filling/flow-time-interface.ts';
import { gateSpeed as fillingGateSpeed } from './filling/gate-speed.ts';
import { ladleEmpty as fillingLadleEmpty } from './filling/ladle-empty.ts';
import { losses as fillingLosses } from './filling/losses.ts';
import { massFlow as fillingMassFlow } from './filling/mass-flow.ts';
import { metalLoss as fillingMetalLoss } from './filling/metal-loss.ts';
import { pourRate as fillingPourRate } from './filling/pour-rate.ts';
import { preheatNeeded as fillingPreheatNeeded } from './filling/preheat-needed.ts';
import { reynolds as fillingReynolds } from './filling/reynolds.ts';
import { runLoss as fillingRunLoss } from './filling/run-loss.ts';
import { sectionSpeed as fillingSectionSpeed } from './filling/section-speed.ts';
import { sprueTaper as fillingSprueTaper } from './filling/sprue-taper.ts';
import { velocity as fillingVelocity } from './filling/velocity.ts';
import { volumeFlow as fillingVolumeFlow } from './filling/volume-flow.ts';
import { weber as fillingWeber } from './filling/weber.ts';
import { biot as freezingBiot } from './freezing/biot.ts';
import { contactTemperature as freezingContactTemperature } from './freezing/contact-temperature.ts';
import { coolingAfter as freezingCoolingAfter } from './freezing/cooling-after.ts';
import { curvature as freezingCurvature } from './freezing/curvature.ts';
import { fourier as freezingFourier } from './freezing/fourier.ts';
import { frontRoot as freezingFrontRoot } from './freezing/front-root.ts';
import { frontRootHeld as freezingFrontRootHeld } from './freezing/front-root-held.ts';
import { frontTime as freezingFrontTime } from './freezing/front-time.ts';
import { heatBalance as freezingHeatBalance } from './freezing/heat-balance.ts';
import { heatDiffusivity as freezingHeatDiffusivity } from './freezing/heat-diffusivity.ts';
import { modulus as freezingModulus } from './freezing/modulus.ts';
import { mouldConstant as freezingMouldConstant } from './freezing/mould-constant.ts';
import { mouldMassRatio as freezingMouldMassRatio } from './freezing/mould-mass-ratio.ts';
import { mouldTemperature as freezingMouldTemperature } from './freezing/mould-temperature.ts';
import { thermalDiffusivity as freezingThermalDiffusivity } from './freezing/thermal-diffusivity.ts';
import { timeBoth as freezingTimeBoth } from './freezing/time-both.ts';
import { timeBothCurved as freezingTimeBothCurved } from './freezing/time-both-curved.ts';
import { timeCurved as freezingTimeCurved } from './freezing/time-curved.ts';
import { timeDie as freezingTimeDie } from './freezing/time-die.ts';
import { timeInterface as freezingTimeInterface } from './freezing/time-interface.ts';
import { timeRule as freezingTimeRule } from './freezing/time-rule.ts';
import { timeSand as freezingTimeSand } from './freezing/time-sand.ts';
import { density as inspectionDensity } from './inspection/density.ts';
import { porosity as inspectionPorosity } from './inspection/porosity.ts';
import { waterDensity as inspectionWaterDensity } from './inspection/water-density.ts';
import { vapourPressure as investmentVapourPressure } from './investment/vapour-pressure.ts';
import { energy as meltingEnergy } from './melting/energy.ts';
import { fuel as meltingFuel } from './melting/fuel.ts';
import { gas as meltingGas } from './melting/gas.ts';
import { pourWindow as meltingPourWindow } from './melting/pour-window.ts';
import { surfaceLoss as meltingSurfaceLoss } from './melting/surface-loss.ts';
import { time as meltingTime } from './melting/time.ts';
import { allowanceChain as patternAllowanceChain } from './pattern/allowance-chain.ts';
import { contraction as patternContraction } from './pattern/contraction.ts';
import { draft as patternDraft } from './pattern/draft.ts';
import { blowBack as safetyBlowBack } from './safety/blow-back.ts';
import { burnoutVapour as safetyBurnoutVapour } from './safety/burnout-vapour.ts';
import { dilution as safetyDilution } from './safety/dilution.ts';
import { dilutionAir as safetyDilutionAir } from './safety/dilution-air.ts';
import { dust as safetyDust } from './safety/dust.ts';
import { fume as safetyFume } from './safety/fume.ts';
import { mixedExposure as safetyMixedExposure } from './safety/mixed-exposure.ts';
import { quench as safetyQuench } from './safety/quench.ts';
import { quenchSteam as safetyQuenchSteam } from './safety/quench-steam.ts';
import { radiant as safetyRadiant } from './safety/radiant.ts';
import { radiantTime as safetyRadiantTime } from './safety/radiant-time.ts';
import { spill as safetySpill } from './safety/spill.ts';
import { spillSand as safetySpillSand } from './safety/spill-sand.ts';
import { steam as safetySteam } from './safety/steam.ts';
import { suctionRunOut as safetySuctionRunOut } from './safety/suction-run-out.ts';
import { vessel as safetyVessel } from './safety/vessel.ts';
import { cakeBending as sandCakeBending } from './sand/cake-bending.ts';
import { cakeShear as sandCakeShear } from './sand/cake-shear.ts';
import { coreBuoyancy as sandCoreBuoyancy } from './sand/core-buoyancy.ts';
import { lift as sandLift } from './sand/lift.ts';
import { permeability as sandPermeability } from './sand/permeability.ts';
import { reach as sandReach } from './sand/reach.ts';
import { weight as sandWeight } from './sand/weight.ts';
import { ambient as vacuumAmbient } from './vacuum/ambient.ts';
import { atCavity as vacuumAtCavity } from './vacuum/at-cavity.ts';
import { force as vacuumForce } from './vacuum/force.ts';
import { gauge as vacuumGauge } from './vacuum/gauge.ts';
import { head as vacuumHead } from './vacuum/head.ts';
import { leakUp as vacuumLeakUp } from './vacuum/leak-up.ts';
import { penetration as vacuumPenetration } from './vacuum/penetration.ts';
import { pumpDown as vacuumPumpDown } from './vacuum/pump-down.ts';
import { reachTime as vacuumReachTime } from './vacuum/reach-time.ts';
import { reservoir as vacuumReservoir } from './vacuum/reservoir.ts';
import { standing as vacuumStanding } from './vacuum/standing.ts';

export const formulas: Readonly<Record<string, Formula>> = {
  'charge/crucible-fit': chargeCrucibleFit,
  'charge/deoxidiser': chargeDeoxidiser,
  'charge/dilute': chargeDilute,
  'charge/mass-from-pattern': chargeMassFromPattern,
  'charge/mass-from-volume': chargeMassFromVolume,
  'charge/total': chargeTotal,
  'charge/volume-by-immersion': chargeVolumeByImmersion,
  'charge/yield': chargeYield,
  'feeding/button': feedingButton,
  'feeding/chill': feedingChill,
  'feeding/chill-mass': feedingChillMass,
  'feeding/demand': feedingDemand,
  'feeding/distance': feedingDistance,
  'feeding/distance-bar': feedingDistanceBar,
  'feeding/feeder-by-volume': feedingFeederByVolume,
  'feeding/feeder-size': feedingFeederSize,
  'feeding/feeder-volume': feedingFeederVolume,
  'feeding/freezing-ratio': feedingFreezingRatio,
  'feeding/gradient': feedingGradient,
  'feeding/junction': feedingJunction,
  'feeding/junction-corner': feedingJunctionCorner,
  'feeding/junction-tee': feedingJunctionTee,
  'feeding/modulus-chain': feedingModulusChain,
  'feeding/neck': feedingNeck,
  'feeding/none': feedingNone,
  'feeding/volume-rule': feedingVolumeRule,
  'filling/back-pressure': fillingBackPressure,
  'filling/choke': fillingChoke,
  'filling/corner-radius': fillingCornerRadius,
  'filling/edge-radius': fillingEdgeRadius,
  'filling/effective-head': fillingEffectiveHead,
  'filling/entry-head': fillingEntryHead,
  'filling/entry-pressure': fillingEntryPressure,
  'filling/entry-pressure-round': fillingEntryPressureRound,
  'filling/fall-speed': fillingFallSpeed,
  'filling/fill-time': fillingFillTime,
  'filling/fill-time-bottom': fillingFillTimeBottom,
  'filling/fill-time-top': fillingFillTimeTop,
  'filling/flow-length': fillingFlowLength,
  'filling/flow-length-sand': fillingFlowLengthSand,
  'filling/flow-time': fillingFlowTime,
  'filling/flow-time-interface': fillingFlowTimeInterface,
  'filling/gate-speed': fillingGateSpeed,
  'filling/ladle-empty': fillingLadleEmpty,
  'filling/losses': fillingLosses,
  'filling/mass-flow': fillingMassFlow,
  'filling/metal-loss': fillingMetalLoss,
  'filling/pour-rate': fillingPourRate,
  'filling/preheat-needed': fillingPreheatNeeded,
  'filling/reynolds': fillingReynolds,
  'filling/run-loss': fillingRunLoss,
  'filling/section-speed': fillingSectionSpeed,
  'filling/sprue-taper': fillingSprueTaper,
  'filling/velocity': fillingVelocity,
  'filling/volume-flow': fillingVolumeFlow,
  'filling/weber': fillingWeber,
  'freezing/biot': freezingBiot,
  'freezing/contact-temperature': freezingContactTemperature,
  'freezing/cooling-after': freezingCoolingAfter,
  'freezing/curvature': freezingCurvature,
  'freezing/fourier': freezingFourier,
  'freezing/front-root': freezingFrontRoot,
  'freezing/front-root-held': freezingFrontRootHeld,
  'freezing/front-time': freezingFrontTime,
  'freezing/heat-balance': freezingHeatBalance,
  'freezing/heat-diffusivity': freezingHeatDiffusivity,
  'freezing/modulus': freezingModulus,
  'freezing/mould-constant': freezingMouldConstant,
  'freezing/mould-mass-ratio': freezingMouldMassRatio,
  'freezing/mould-temperature': freezingMouldTemperature,
  'freezing/thermal-diffusivity': freezingThermalDiffusivity,
  'freezing/time-both': freezingTimeBoth,
  'freezing/time-both-curved': freezingTimeBothCurved,
  'freezing/time-curved': freezingTimeCurved,
  'freezing/time-die': freezingTimeDie,
  'freezing/time-interface': freezingTimeInterface,
  'freezing/time-rule': freezingTimeRule,
  'freezing/time-sand': freezingTimeSand,
  'inspection/density': inspectionDensity,
  'inspection/porosity': inspectionPorosity,
  'inspection/water-density': inspectionWaterDensity,
  'investment/vapour-pressure': investmentVapourPressure,
  'melting/energy': meltingEnergy,
  'melting/fuel': meltingFuel,
  'melting/gas': meltingGas,
  'melting/pour-window': meltingPourWindow,
  'melting/surface-loss': meltingSurfaceLoss,
  'melting/time': meltingTime,
  'pattern/allowance-chain': patternAllowanceChain,
  'pattern/contraction': patternContraction,
  'pattern/draft': patternDraft,
  'safety/blow-back': safetyBlowBack,
  'safety/burnout-vapour': safetyBurnoutVapour,
  'safety/dilution': safetyDilution,
  'safety/dilution-air': safetyDilutionAir,
  'safety/dust': safetyDust,
  'safety/fume': safetyFume,
  'safety/mixed-exposure': safetyMixedExposure,
  'safety/quench': safetyQuench,
  'safety/quench-steam': safetyQuenchSteam,
  'safety/radiant': safetyRadiant,
  'safety/radiant-time': safetyRadiantTime,
  'safety/spill': safetySpill,
  'safety/spill-sand': safetySpillSand,
  'safety/steam': safetySteam,
  'safety/suction-run-out': safetySuctionRunOut,
  'safety/vessel': safetyVessel,
  'sand/cake-bending': sandCakeBending,
  'sand/cake-shear': sandCakeShear,
  'sand/core-buoyancy': sandCoreBuoyancy,
  'sand/lift': sandLift,
  'sand/permeability': sandPermeability,
  'sand/reach': sandReach,
  'sand/weight': sandWeight,
  'vacuum/ambient': vacuumAmbient,
  'vacuum/at-cavity': vacuumAtCavity,
  'vacuum/force': vacuumForce,
  'vacuum/gauge': vacuumGauge,
  'vacuum/head': vacuumHead,
  'vacuum/leak-up': vacuumLeakUp,
  'vacuum/penetration': vacuumPenetration,
  'vacuum/pump-down': vacuumPumpDown,
  'vacuum/reach-time': vacuumReachTime,
  'vacuum/reservoir': vacuumReservoir,
  'vacuum/standing': vacuumStanding,
};

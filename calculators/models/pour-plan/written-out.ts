// Written by `npm run index` from the equations of the formulas the plan uses; change those and run it again.
import { rootNear } from '../../core/bracket.ts';
import { isPast } from '../../core/solve.ts';
import { solverFor } from '../../core/solver.ts';
import { apart, isAnswer, type Written } from '../../core/written.ts';
import { fromSI, toSI } from '../../core/units.ts';
import { erfcx } from '../../core/special.ts';
import { crucibleFit as chargeCrucibleFit } from '../../formulas/charge/crucible-fit.ts';
import { massFromPattern as chargeMassFromPattern } from '../../formulas/charge/mass-from-pattern.ts';
import { massFromVolume as chargeMassFromVolume } from '../../formulas/charge/mass-from-volume.ts';
import { total as chargeTotal } from '../../formulas/charge/total.ts';
import { castingYield as chargeYield } from '../../formulas/charge/yield.ts';
import { demand as feedingDemand } from '../../formulas/feeding/demand.ts';
import { modulusChain as feedingModulusChain } from '../../formulas/feeding/modulus-chain.ts';
import { none as feedingNone } from '../../formulas/feeding/none.ts';
import { volumeRule as feedingVolumeRule } from '../../formulas/feeding/volume-rule.ts';
import { backPressure as fillingBackPressure } from '../../formulas/filling/back-pressure.ts';
import { cornerRadius as fillingCornerRadius } from '../../formulas/filling/corner-radius.ts';
import { edgeRadius as fillingEdgeRadius } from '../../formulas/filling/edge-radius.ts';
import { entryPressure as fillingEntryPressure } from '../../formulas/filling/entry-pressure.ts';
import { fillTime as fillingFillTime } from '../../formulas/filling/fill-time.ts';
import { flowLength as fillingFlowLength } from '../../formulas/filling/flow-length.ts';
import { flowTime as fillingFlowTime } from '../../formulas/filling/flow-time.ts';
import { flowTimeInterface as fillingFlowTimeInterface } from '../../formulas/filling/flow-time-interface.ts';
import { gateSpeed as fillingGateSpeed } from '../../formulas/filling/gate-speed.ts';
import { metalLoss as fillingMetalLoss } from '../../formulas/filling/metal-loss.ts';
import { pourRate as fillingPourRate } from '../../formulas/filling/pour-rate.ts';
import { runLoss as fillingRunLoss } from '../../formulas/filling/run-loss.ts';
import { sectionSpeed as fillingSectionSpeed } from '../../formulas/filling/section-speed.ts';
import { velocity as fillingVelocity } from '../../formulas/filling/velocity.ts';
import { coolingAfter as freezingCoolingAfter } from '../../formulas/freezing/cooling-after.ts';
import { curvature as freezingCurvature } from '../../formulas/freezing/curvature.ts';
import { heatBalance as freezingHeatBalance } from '../../formulas/freezing/heat-balance.ts';
import { heatDiffusivity as freezingHeatDiffusivity } from '../../formulas/freezing/heat-diffusivity.ts';
import { modulus as freezingModulus } from '../../formulas/freezing/modulus.ts';
import { mouldConstant as freezingMouldConstant } from '../../formulas/freezing/mould-constant.ts';
import { timeBoth as freezingTimeBoth } from '../../formulas/freezing/time-both.ts';
import { timeBothCurved as freezingTimeBothCurved } from '../../formulas/freezing/time-both-curved.ts';
import { timeCurved as freezingTimeCurved } from '../../formulas/freezing/time-curved.ts';
import { timeRule as freezingTimeRule } from '../../formulas/freezing/time-rule.ts';
import { timeSand as freezingTimeSand } from '../../formulas/freezing/time-sand.ts';
import { density as inspectionDensity } from '../../formulas/inspection/density.ts';
import { energy as meltingEnergy } from '../../formulas/melting/energy.ts';
import { gas as meltingGas } from '../../formulas/melting/gas.ts';
import { pourWindow as meltingPourWindow } from '../../formulas/melting/pour-window.ts';
import { time as meltingTime } from '../../formulas/melting/time.ts';
import { contraction as patternContraction } from '../../formulas/pattern/contraction.ts';
import { burnoutVapour as safetyBurnoutVapour } from '../../formulas/safety/burnout-vapour.ts';
import { radiant as safetyRadiant } from '../../formulas/safety/radiant.ts';
import { spillSand as safetySpillSand } from '../../formulas/safety/spill-sand.ts';
import { steam as safetySteam } from '../../formulas/safety/steam.ts';
import { suctionRunOut as safetySuctionRunOut } from '../../formulas/safety/suction-run-out.ts';
import { cakeBending as sandCakeBending } from '../../formulas/sand/cake-bending.ts';
import { cakeShear as sandCakeShear } from '../../formulas/sand/cake-shear.ts';
import { lift as sandLift } from '../../formulas/sand/lift.ts';
import { weight as sandWeight } from '../../formulas/sand/weight.ts';
import { ambient as vacuumAmbient } from '../../formulas/vacuum/ambient.ts';
import { atCavity as vacuumAtCavity } from '../../formulas/vacuum/at-cavity.ts';
import { force as vacuumForce } from '../../formulas/vacuum/force.ts';
import { gauge as vacuumGauge } from '../../formulas/vacuum/gauge.ts';
import { head as vacuumHead } from '../../formulas/vacuum/head.ts';
import { penetration as vacuumPenetration } from '../../formulas/vacuum/penetration.ts';

// prettier-ignore
export const writtenOut: readonly Written[] = [
  [chargeCrucibleFit, 'm', (given) => {
    const rho_l = given['rho_l']!;
    const V = given['V']!;
    const f = given['f']!;
    if (!Number.isFinite(rho_l) || !Number.isFinite(V) || !Number.isFinite(f)) return Number.NaN;
    if (isPast(chargeCrucibleFit.symbols['f']!, given['f']!)) return Number.NaN;
    const m = rho_l * V * f;
    if (!Number.isFinite(m)) return Number.NaN;
    return m;
  }],
  [chargeMassFromPattern, 'm', (given) => {
    const m_p = given['m_p']!;
    const rho_m = given['rho_m']!;
    const rho_p = given['rho_p']!;
    const s = given['s']!;
    if (!Number.isFinite(m_p) || !Number.isFinite(rho_m) || !Number.isFinite(rho_p) || !Number.isFinite(s)) return Number.NaN;
    const m = m_p * rho_m / (rho_p * (1 + s) ** 3);
    if (!Number.isFinite(m)) return Number.NaN;
    return m;
  }],
  [chargeMassFromVolume, 'm', (given) => {
    const rho = given['rho']!;
    const V = given['V']!;
    if (!Number.isFinite(rho) || !Number.isFinite(V)) return Number.NaN;
    const m = rho * V;
    if (!Number.isFinite(m)) return Number.NaN;
    return m;
  }],
  [chargeMassFromVolume, 'V', (given) => {
    const m = given['m']!;
    const rho = given['rho']!;
    if (!Number.isFinite(m) || !Number.isFinite(rho)) return Number.NaN;
    const V = m / rho;
    if (!isAnswer(V, m, rho * V)) return Number.NaN;
    return V;
  }],
  [chargeTotal, 'm', (given) => {
    const m_part = given['m_part']!;
    const m_sprue = given['m_sprue']!;
    const m_feeder = given['m_feeder']!;
    const m_heel = given['m_heel']!;
    const w = given['w']!;
    if (!Number.isFinite(m_part) || !Number.isFinite(m_sprue) || !Number.isFinite(m_feeder) || !Number.isFinite(m_heel) || !Number.isFinite(w)) return Number.NaN;
    const m = (m_part + m_sprue + m_feeder + m_heel) / (1 - w);
    if (!Number.isFinite(m)) return Number.NaN;
    return m;
  }],
  [chargeYield, 'eta', (given) => {
    const m_part = given['m_part']!;
    const m = given['m']!;
    if (!Number.isFinite(m_part) || !Number.isFinite(m)) return Number.NaN;
    const eta = m_part / m;
    if (!Number.isFinite(eta)) return Number.NaN;
    if (!(m_part <= m)) return Number.NaN;
    return eta;
  }],
  [feedingDemand, 'V_s', (given) => {
    const V = given['V']!;
    const beta = given['beta']!;
    const a = given['a']!;
    const dT = given['dT']!;
    if (!Number.isFinite(V) || !Number.isFinite(beta) || !Number.isFinite(a) || !Number.isFinite(dT)) return Number.NaN;
    const V_s = V * (a * dT + beta);
    if (!Number.isFinite(V_s)) return Number.NaN;
    return V_s;
  }],
  [feedingModulusChain, 'M_2', (given) => {
    const M_1 = given['M_1']!;
    const k = given['k']!;
    if (!Number.isFinite(M_1) || !Number.isFinite(k)) return Number.NaN;
    const M_2 = k * M_1;
    if (!Number.isFinite(M_2)) return Number.NaN;
    return M_2;
  }],
  [feedingNone, 'D', (given) => {
    const f = given['f']!;
    const V = given['V']!;
    if (!Number.isFinite(f) || !Number.isFinite(V)) return Number.NaN;
    const D = (6 * f * V / Math.PI) ** (1 / 3);
    if (!Number.isFinite(D)) return Number.NaN;
    if (!(f > 0)) return Number.NaN;
    return D;
  }],
  [feedingVolumeRule, 'V_f', (given) => {
    const V = given['V']!;
    const beta = given['beta']!;
    const e = given['e']!;
    if (!Number.isFinite(V) || !Number.isFinite(beta) || !Number.isFinite(e)) return Number.NaN;
    const V_f = beta * V / (e - beta);
    if (!Number.isFinite(V_f)) return Number.NaN;
    if (!(e > beta)) return Number.NaN;
    return V_f;
  }],
  [fillingBackPressure, 'p_gas', (given) => {
    const Q = given['Q']!;
    const mu = given['mu']!;
    const l = given['l']!;
    const K = given['K']!;
    const A = given['A']!;
    if (!Number.isFinite(Q) || !Number.isFinite(mu) || !Number.isFinite(l) || !Number.isFinite(K) || !Number.isFinite(A)) return Number.NaN;
    const p_gas = Q * mu * l / (K * A);
    if (!Number.isFinite(p_gas)) return Number.NaN;
    return p_gas;
  }],
  [fillingCornerRadius, 'r', (given) => {
    const gamma = given['gamma']!;
    const rho = given['rho']!;
    const h = given['h']!;
    const dp = given['dp']!;
    const p_gas = given['p_gas']!;
    const g = given['g'] ?? 9.80665;
    if (!Number.isFinite(gamma) || !Number.isFinite(rho) || !Number.isFinite(h) || !Number.isFinite(dp) || !Number.isFinite(p_gas) || !Number.isFinite(g)) return Number.NaN;
    const r = 2 * gamma / (rho * g * h + dp - p_gas);
    if (!Number.isFinite(r)) return Number.NaN;
    if (!(rho * g * h + dp > p_gas)) return Number.NaN;
    return r;
  }],
  [fillingEdgeRadius, 'r', (given) => {
    const gamma = given['gamma']!;
    const rho = given['rho']!;
    const h = given['h']!;
    const dp = given['dp']!;
    const p_gas = given['p_gas']!;
    const g = given['g'] ?? 9.80665;
    if (!Number.isFinite(gamma) || !Number.isFinite(rho) || !Number.isFinite(h) || !Number.isFinite(dp) || !Number.isFinite(p_gas) || !Number.isFinite(g)) return Number.NaN;
    const r = gamma / (rho * g * h + dp - p_gas);
    if (!Number.isFinite(r)) return Number.NaN;
    if (!(rho * g * h + dp > p_gas)) return Number.NaN;
    return r;
  }],
  [fillingEntryPressure, 'p_cap', (given) => {
    const gamma = given['gamma']!;
    const theta = given['theta']!;
    const a = given['a']!;
    const c = given['c']!;
    if (!Number.isFinite(gamma) || !Number.isFinite(theta) || !Number.isFinite(a) || !Number.isFinite(c)) return Number.NaN;
    const p_cap = -2 * gamma * Math.cos(theta) * (1 / a + 1 / c);
    if (!Number.isFinite(p_cap)) return Number.NaN;
    return p_cap;
  }],
  [fillingFillTime, 't', (given) => {
    const l = given['l']!;
    const v = given['v']!;
    if (!Number.isFinite(l) || !Number.isFinite(v)) return Number.NaN;
    const t = l / v;
    if (!Number.isFinite(t)) return Number.NaN;
    return t;
  }],
  [fillingFlowLength, 'l', (given) => {
    const v = given['v']!;
    const rho = given['rho']!;
    const M = given['M']!;
    const f = given['f']!;
    const L = given['L']!;
    const c = given['c']!;
    const dT = given['dT']!;
    const h = given['h']!;
    const T_f = given['T_f']!;
    const T_m = given['T_m']!;
    if (!Number.isFinite(v) || !Number.isFinite(rho) || !Number.isFinite(M) || !Number.isFinite(f) || !Number.isFinite(L) || !Number.isFinite(c) || !Number.isFinite(dT) || !Number.isFinite(h) || !Number.isFinite(T_f) || !Number.isFinite(T_m)) return Number.NaN;
    const l = v * rho * M * (f * L + c * dT) / (h * (T_f - T_m));
    if (!Number.isFinite(l)) return Number.NaN;
    if (!(T_f > T_m)) return Number.NaN;
    return l;
  }],
  [fillingFlowTime, 't', (given, near = 0) => {
    const rho = given['rho']!;
    const M = given['M']!;
    const f = given['f']!;
    const L = given['L']!;
    const c = given['c']!;
    const dT = given['dT']!;
    const b = given['b']!;
    const h = given['h']!;
    const T_f = given['T_f']!;
    const T_m = given['T_m']!;
    if (!Number.isFinite(rho) || !Number.isFinite(M) || !Number.isFinite(f) || !Number.isFinite(L) || !Number.isFinite(c) || !Number.isFinite(dT) || !Number.isFinite(b) || !Number.isFinite(h) || !Number.isFinite(T_f) || !Number.isFinite(T_m)) return Number.NaN;
    const part1 = b * (T_f - T_m);
    const part2 = b / h;
    const part3 = rho * M * (f * L + c * dT);
    const t = rootNear((t) => apart(part1 * (2 * Math.sqrt(t / Math.PI) - part2 * (1 - erfcx(h * Math.sqrt(t) / b))), part3), near);
    if (Number.isNaN(t)) return solverFor(fillingFlowTime, 't')(given);
    if (!(T_f > T_m)) return Number.NaN;
    return t;
  }],
  [fillingFlowTimeInterface, 't', (given) => {
    const rho = given['rho']!;
    const M = given['M']!;
    const f = given['f']!;
    const L = given['L']!;
    const c = given['c']!;
    const dT = given['dT']!;
    const h = given['h']!;
    const T_f = given['T_f']!;
    const T_m = given['T_m']!;
    if (!Number.isFinite(rho) || !Number.isFinite(M) || !Number.isFinite(f) || !Number.isFinite(L) || !Number.isFinite(c) || !Number.isFinite(dT) || !Number.isFinite(h) || !Number.isFinite(T_f) || !Number.isFinite(T_m)) return Number.NaN;
    const t = rho * M * (f * L + c * dT) / (h * (T_f - T_m));
    if (!Number.isFinite(t)) return Number.NaN;
    if (!(T_f > T_m)) return Number.NaN;
    return t;
  }],
  [fillingFlowTimeInterface, 'T_m', (given) => {
    const t = given['t']!;
    const rho = given['rho']!;
    const M = given['M']!;
    const f = given['f']!;
    const L = given['L']!;
    const c = given['c']!;
    const dT = given['dT']!;
    const h = given['h']!;
    const T_f = given['T_f']!;
    if (!Number.isFinite(t) || !Number.isFinite(rho) || !Number.isFinite(M) || !Number.isFinite(f) || !Number.isFinite(L) || !Number.isFinite(c) || !Number.isFinite(dT) || !Number.isFinite(h) || !Number.isFinite(T_f)) return Number.NaN;
    const T_m = T_f - rho * M * (f * L + c * dT) / (t * h);
    if (!isAnswer(T_m, t, rho * M * (f * L + c * dT) / (h * (T_f - T_m)))) return Number.NaN;
    if (!(T_f > T_m)) return Number.NaN;
    return T_m;
  }],
  [fillingGateSpeed, 'v', (given) => {
    const gamma = given['gamma']!;
    const rho = given['rho']!;
    const g = given['g'] ?? 9.80665;
    if (!Number.isFinite(gamma) || !Number.isFinite(rho) || !Number.isFinite(g)) return Number.NaN;
    const v = 2 * (gamma * g / rho) ** (1 / 4);
    if (!Number.isFinite(v)) return Number.NaN;
    return v;
  }],
  [fillingMetalLoss, 'dT', (given) => {
    const T = given['T']!;
    const T_a = given['T_a']!;
    const epsilon = given['epsilon']!;
    const h = given['h']!;
    const A = given['A']!;
    const t = given['t']!;
    const m = given['m']!;
    const c = given['c']!;
    const sigma = given['sigma'] ?? 5.670374419e-8;
    if (!Number.isFinite(T) || !Number.isFinite(T_a) || !Number.isFinite(epsilon) || !Number.isFinite(h) || !Number.isFinite(A) || !Number.isFinite(t) || !Number.isFinite(m) || !Number.isFinite(c) || !Number.isFinite(sigma)) return Number.NaN;
    const dT = (epsilon * sigma * (T ** 4 - T_a ** 4) + h * (T - T_a)) * A * t / (m * c);
    if (!Number.isFinite(dT)) return Number.NaN;
    if (!(T > T_a)) return Number.NaN;
    return dT;
  }],
  [fillingPourRate, 'Q', (given) => {
    const m = given['m']!;
    const rho = given['rho']!;
    const t = given['t']!;
    if (!Number.isFinite(m) || !Number.isFinite(rho) || !Number.isFinite(t)) return Number.NaN;
    const Q = m / (rho * t);
    if (!Number.isFinite(Q)) return Number.NaN;
    return Q;
  }],
  [fillingRunLoss, 'T_2', (given) => {
    const T_1 = given['T_1']!;
    const T_m = given['T_m']!;
    const h = given['h']!;
    const l = given['l']!;
    const rho = given['rho']!;
    const c = given['c']!;
    const M = given['M']!;
    const v = given['v']!;
    if (!Number.isFinite(T_1) || !Number.isFinite(T_m) || !Number.isFinite(h) || !Number.isFinite(l) || !Number.isFinite(rho) || !Number.isFinite(c) || !Number.isFinite(M) || !Number.isFinite(v)) return Number.NaN;
    const T_2 = T_m + (T_1 - T_m) * Math.exp(-h * l / (rho * c * M * v));
    if (!Number.isFinite(T_2)) return Number.NaN;
    if (!(T_1 > T_m)) return Number.NaN;
    return T_2;
  }],
  [fillingSectionSpeed, 'v', (given) => {
    const Q = given['Q']!;
    const A = given['A']!;
    const n = given['n']!;
    if (!Number.isFinite(Q) || !Number.isFinite(A) || !Number.isFinite(n)) return Number.NaN;
    const v = Q / (n * A);
    if (!Number.isFinite(v)) return Number.NaN;
    return v;
  }],
  [fillingVelocity, 'v', (given) => {
    const C = given['C']!;
    const h = given['h']!;
    const dp = given['dp']!;
    const p_cap = given['p_cap']!;
    const rho = given['rho']!;
    const g = given['g'] ?? 9.80665;
    if (!Number.isFinite(C) || !Number.isFinite(h) || !Number.isFinite(dp) || !Number.isFinite(p_cap) || !Number.isFinite(rho) || !Number.isFinite(g)) return Number.NaN;
    const v = C * Math.sqrt(2 * (g * h + (dp - p_cap) / rho));
    if (!Number.isFinite(v)) return Number.NaN;
    if (!(g * h + (dp - p_cap) / rho > 0)) return Number.NaN;
    return v;
  }],
  [freezingCoolingAfter, 't', (given) => {
    const rho = given['rho']!;
    const c = given['c']!;
    const M = given['M']!;
    const h = given['h']!;
    const T_1 = given['T_1']!;
    const T_2 = given['T_2']!;
    const T_a = given['T_a']!;
    if (!Number.isFinite(rho) || !Number.isFinite(c) || !Number.isFinite(M) || !Number.isFinite(h) || !Number.isFinite(T_1) || !Number.isFinite(T_2) || !Number.isFinite(T_a)) return Number.NaN;
    const t = rho * c * M / h * Math.log((T_1 - T_a) / (T_2 - T_a));
    if (!Number.isFinite(t)) return Number.NaN;
    if (!(T_1 > T_2)) return Number.NaN;
    if (!(T_2 > T_a)) return Number.NaN;
    return t;
  }],
  [freezingCurvature, 'h_R', (given) => {
    const n = given['n']!;
    const k = given['k']!;
    const R = given['R']!;
    if (!Number.isFinite(n) || !Number.isFinite(k) || !Number.isFinite(R)) return Number.NaN;
    const h_R = n * k / (2 * R);
    if (!Number.isFinite(h_R)) return Number.NaN;
    return h_R;
  }],
  [freezingHeatBalance, 'T_e', (given) => {
    const m = given['m']!;
    const m_m = given['m_m']!;
    const T_p = given['T_p']!;
    const T_f = given['T_f']!;
    const T_m = given['T_m']!;
    const L = given['L']!;
    const c_l = given['c_l']!;
    const c_s = given['c_s']!;
    const c_m = given['c_m']!;
    if (!Number.isFinite(m) || !Number.isFinite(m_m) || !Number.isFinite(T_p) || !Number.isFinite(T_f) || !Number.isFinite(T_m) || !Number.isFinite(L) || !Number.isFinite(c_l) || !Number.isFinite(c_s) || !Number.isFinite(c_m)) return Number.NaN;
    const T_e = (m * (c_l * (T_p - T_f) + L + c_s * T_f) + m_m * c_m * T_m) / (m * c_s + m_m * c_m);
    if (!Number.isFinite(T_e)) return Number.NaN;
    if (!(T_p >= T_f)) return Number.NaN;
    if (!(T_e <= T_f)) return Number.NaN;
    if (!(T_f > T_m)) return Number.NaN;
    return T_e;
  }],
  [freezingHeatDiffusivity, 'b', (given) => {
    const k = given['k']!;
    const rho = given['rho']!;
    const c = given['c']!;
    if (!Number.isFinite(k) || !Number.isFinite(rho) || !Number.isFinite(c)) return Number.NaN;
    const b = Math.sqrt(k * rho * c);
    if (!Number.isFinite(b)) return Number.NaN;
    return b;
  }],
  [freezingModulus, 'M', (given) => {
    const V = given['V']!;
    const A = given['A']!;
    if (!Number.isFinite(V) || !Number.isFinite(A)) return Number.NaN;
    const M = V / A;
    if (!Number.isFinite(M)) return Number.NaN;
    return M;
  }],
  [freezingMouldConstant, 'B', (given) => {
    const rho = given['rho']!;
    const L = given['L']!;
    const c = given['c']!;
    const dT = given['dT']!;
    const b = given['b']!;
    const T_f = given['T_f']!;
    const T_m = given['T_m']!;
    if (!Number.isFinite(rho) || !Number.isFinite(L) || !Number.isFinite(c) || !Number.isFinite(dT) || !Number.isFinite(b) || !Number.isFinite(T_f) || !Number.isFinite(T_m)) return Number.NaN;
    const B = Math.PI / 4 * (rho * (L + c * dT) / (b * (T_f - T_m))) ** 2;
    if (!Number.isFinite(B)) return Number.NaN;
    if (!(T_f > T_m)) return Number.NaN;
    return B;
  }],
  [freezingTimeBoth, 't', (given, near = 0) => {
    const rho = given['rho']!;
    const M = given['M']!;
    const L = given['L']!;
    const c = given['c']!;
    const dT = given['dT']!;
    const b = given['b']!;
    const h = given['h']!;
    const T_f = given['T_f']!;
    const T_m = given['T_m']!;
    if (!Number.isFinite(rho) || !Number.isFinite(M) || !Number.isFinite(L) || !Number.isFinite(c) || !Number.isFinite(dT) || !Number.isFinite(b) || !Number.isFinite(h) || !Number.isFinite(T_f) || !Number.isFinite(T_m)) return Number.NaN;
    const part1 = b * (T_f - T_m);
    const part2 = b / h;
    const part3 = rho * M * (L + c * dT);
    const t = rootNear((t) => apart(part1 * (2 * Math.sqrt(t / Math.PI) - part2 * (1 - erfcx(h * Math.sqrt(t) / b))), part3), near);
    if (Number.isNaN(t)) return solverFor(freezingTimeBoth, 't')(given);
    if (!(T_f > T_m)) return Number.NaN;
    return t;
  }],
  [freezingTimeBothCurved, 't', (given, near = 0) => {
    const rho = given['rho']!;
    const M = given['M']!;
    const L = given['L']!;
    const c = given['c']!;
    const dT = given['dT']!;
    const b = given['b']!;
    const h = given['h']!;
    const h_R = given['h_R']!;
    const T_f = given['T_f']!;
    const T_m = given['T_m']!;
    if (!Number.isFinite(rho) || !Number.isFinite(M) || !Number.isFinite(L) || !Number.isFinite(c) || !Number.isFinite(dT) || !Number.isFinite(b) || !Number.isFinite(h) || !Number.isFinite(h_R) || !Number.isFinite(T_f) || !Number.isFinite(T_m)) return Number.NaN;
    const part1 = rho * M * (L + c * dT);
    const part2 = h * (T_f - T_m);
    const part3 = h + h_R;
    const part4 = h * b ** 2 / (h + h_R) ** 3;
    const part5 = 2 * (h + h_R) / b;
    const t = rootNear((t) => apart(part1, part2 * (h_R * t / part3 + part4 * (part5 * Math.sqrt(t / Math.PI) - 1 + erfcx(part3 * Math.sqrt(t) / b)))), near);
    if (Number.isNaN(t)) return solverFor(freezingTimeBothCurved, 't')(given);
    if (!(T_f > T_m)) return Number.NaN;
    return t;
  }],
  [freezingTimeCurved, 't', (given, near = 0) => {
    const rho = given['rho']!;
    const M = given['M']!;
    const L = given['L']!;
    const c = given['c']!;
    const dT = given['dT']!;
    const b = given['b']!;
    const k = given['k']!;
    const n = given['n']!;
    const R = given['R']!;
    const T_f = given['T_f']!;
    const T_m = given['T_m']!;
    if (!Number.isFinite(rho) || !Number.isFinite(M) || !Number.isFinite(L) || !Number.isFinite(c) || !Number.isFinite(dT) || !Number.isFinite(b) || !Number.isFinite(k) || !Number.isFinite(n) || !Number.isFinite(R) || !Number.isFinite(T_f) || !Number.isFinite(T_m)) return Number.NaN;
    const part1 = rho * M * (L + c * dT);
    const part2 = T_f - T_m;
    const part3 = 2 * b;
    const part4 = n * k;
    const part5 = 2 * R;
    const t = rootNear((t) => apart(part1, part2 * (part3 * Math.sqrt(t / Math.PI) + part4 * t / part5)), near);
    if (Number.isNaN(t)) return solverFor(freezingTimeCurved, 't')(given);
    if (!(T_f > T_m)) return Number.NaN;
    return t;
  }],
  [freezingTimeRule, 't', (given) => {
    const B = fromSI(given['B']!, 's/mm²');
    const M = fromSI(given['M']!, 'mm');
    const n = fromSI(given['n']!, '1');
    if (!Number.isFinite(B) || !Number.isFinite(M) || !Number.isFinite(n)) return Number.NaN;
    const t = B * M ** n;
    if (!Number.isFinite(t)) return Number.NaN;
    return toSI(t, 's');
  }],
  [freezingTimeSand, 't', (given) => {
    const rho = given['rho']!;
    const M = given['M']!;
    const L = given['L']!;
    const c = given['c']!;
    const dT = given['dT']!;
    const b = given['b']!;
    const T_f = given['T_f']!;
    const T_m = given['T_m']!;
    if (!Number.isFinite(rho) || !Number.isFinite(M) || !Number.isFinite(L) || !Number.isFinite(c) || !Number.isFinite(dT) || !Number.isFinite(b) || !Number.isFinite(T_f) || !Number.isFinite(T_m)) return Number.NaN;
    const t = Math.PI / 4 * (rho * M * (L + c * dT) / (b * (T_f - T_m))) ** 2;
    if (!Number.isFinite(t)) return Number.NaN;
    if (!(T_f > T_m)) return Number.NaN;
    return t;
  }],
  [inspectionDensity, 'rho', (given) => {
    const rho_w = given['rho_w']!;
    const m_w = given['m_w']!;
    const m_a = given['m_a']!;
    if (!Number.isFinite(rho_w) || !Number.isFinite(m_w) || !Number.isFinite(m_a)) return Number.NaN;
    const rho = rho_w / (1 - m_w / m_a);
    if (!Number.isFinite(rho)) return Number.NaN;
    if (!(m_w < m_a)) return Number.NaN;
    return rho;
  }],
  [inspectionDensity, 'm_w', (given) => {
    const rho = given['rho']!;
    const rho_w = given['rho_w']!;
    const m_a = given['m_a']!;
    if (!Number.isFinite(rho) || !Number.isFinite(rho_w) || !Number.isFinite(m_a)) return Number.NaN;
    const m_w = (1 - rho_w / rho) * m_a;
    if (!isAnswer(m_w, rho, rho_w / (1 - m_w / m_a))) return Number.NaN;
    if (!(m_w < m_a)) return Number.NaN;
    return m_w;
  }],
  [meltingEnergy, 'E', (given) => {
    const m = given['m']!;
    const c_s = given['c_s']!;
    const T_m = given['T_m']!;
    const T_0 = given['T_0']!;
    const L = given['L']!;
    const c_l = given['c_l']!;
    const T_p = given['T_p']!;
    const m_k = given['m_k']!;
    const c_k = given['c_k']!;
    if (!Number.isFinite(m) || !Number.isFinite(c_s) || !Number.isFinite(T_m) || !Number.isFinite(T_0) || !Number.isFinite(L) || !Number.isFinite(c_l) || !Number.isFinite(T_p) || !Number.isFinite(m_k) || !Number.isFinite(c_k)) return Number.NaN;
    const E = m * (c_s * (T_m - T_0) + L + c_l * (T_p - T_m)) + m_k * c_k * (T_p - T_0);
    if (!Number.isFinite(E)) return Number.NaN;
    if (!(T_p >= T_m)) return Number.NaN;
    return E;
  }],
  [meltingGas, 'V', (given) => {
    const m = fromSI(given['m']!, 'g');
    const A = fromSI(given['A']!, '1');
    const B = fromSI(given['B']!, '1');
    const T = fromSI(given['T']!, 'K');
    const p = fromSI(given['p']!, 'atm');
    if (!Number.isFinite(m) || !Number.isFinite(A) || !Number.isFinite(B) || !Number.isFinite(T) || !Number.isFinite(p)) return Number.NaN;
    const V = m / 100 * 10 ** (A - B / T) * Math.sqrt(p);
    if (!Number.isFinite(V)) return Number.NaN;
    return toSI(V, 'cm³');
  }],
  [meltingPourWindow, 't', (given) => {
    const m = given['m']!;
    const c = given['c']!;
    const m_k = given['m_k']!;
    const c_k = given['c_k']!;
    const T_f = given['T_f']!;
    const T_l = given['T_l']!;
    const A = given['A']!;
    const eps = given['eps']!;
    const sigma = given['sigma'] ?? 5.670374419e-8;
    const T_a = given['T_a']!;
    const h = given['h']!;
    if (!Number.isFinite(m) || !Number.isFinite(c) || !Number.isFinite(m_k) || !Number.isFinite(c_k) || !Number.isFinite(T_f) || !Number.isFinite(T_l) || !Number.isFinite(A) || !Number.isFinite(eps) || !Number.isFinite(sigma) || !Number.isFinite(T_a) || !Number.isFinite(h)) return Number.NaN;
    const t = (m * c + m_k * c_k) * (T_f - T_l) / (A * (eps * sigma * (((T_f + T_l) / 2) ** 4 - T_a ** 4) + h * ((T_f + T_l) / 2 - T_a)));
    if (!Number.isFinite(t)) return Number.NaN;
    if (!(T_f >= T_l)) return Number.NaN;
    return t;
  }],
  [meltingTime, 't', (given) => {
    const E = given['E']!;
    const eta = given['eta']!;
    const P = given['P']!;
    if (!Number.isFinite(E) || !Number.isFinite(eta) || !Number.isFinite(P)) return Number.NaN;
    const t = E / (eta * P);
    if (!Number.isFinite(t)) return Number.NaN;
    return t;
  }],
  [patternContraction, 'L_p', (given) => {
    const L = given['L']!;
    const s = given['s']!;
    if (!Number.isFinite(L) || !Number.isFinite(s)) return Number.NaN;
    const L_p = L * (1 + s);
    if (!Number.isFinite(L_p)) return Number.NaN;
    return L_p;
  }],
  [safetyBurnoutVapour, 'm', (given) => {
    const x = given['x']!;
    const M = given['M']!;
    const p = given['p']!;
    const V = given['V']!;
    const T = given['T']!;
    const R = given['R'] ?? 8.314462618;
    if (!Number.isFinite(x) || !Number.isFinite(M) || !Number.isFinite(p) || !Number.isFinite(V) || !Number.isFinite(T) || !Number.isFinite(R)) return Number.NaN;
    const m = x * M * p * V / (R * T);
    if (!Number.isFinite(m)) return Number.NaN;
    return m;
  }],
  [safetyRadiant, 'q', (given) => {
    const eps = given['eps']!;
    const sigma = given['sigma'] ?? 5.670374419e-8;
    const T = given['T']!;
    const T_a = given['T_a']!;
    const r = given['r']!;
    const d = given['d']!;
    if (!Number.isFinite(eps) || !Number.isFinite(sigma) || !Number.isFinite(T) || !Number.isFinite(T_a) || !Number.isFinite(r) || !Number.isFinite(d)) return Number.NaN;
    const q = eps * sigma * (T ** 4 - T_a ** 4) * r ** 2 / (r ** 2 + d ** 2);
    if (!Number.isFinite(q)) return Number.NaN;
    return q;
  }],
  [safetySpillSand, 'm', (given) => {
    const rho = given['rho']!;
    const A = given['A']!;
    const s = given['s']!;
    if (!Number.isFinite(rho) || !Number.isFinite(A) || !Number.isFinite(s)) return Number.NaN;
    const m = rho * A * s;
    if (!Number.isFinite(m)) return Number.NaN;
    return m;
  }],
  [safetySteam, 'V', (given) => {
    const m = given['m']!;
    const R = given['R'] ?? 8.314462618;
    const T = given['T']!;
    const M = given['M'] ?? 0.01801528;
    const p = given['p']!;
    if (!Number.isFinite(m) || !Number.isFinite(R) || !Number.isFinite(T) || !Number.isFinite(M) || !Number.isFinite(p)) return Number.NaN;
    const V = m * R * T / (M * p);
    if (!Number.isFinite(V)) return Number.NaN;
    return V;
  }],
  [safetySuctionRunOut, 'm', (given) => {
    const C = given['C']!;
    const rho = given['rho']!;
    const A = given['A']!;
    const t = given['t']!;
    const h = given['h']!;
    const dp = given['dp']!;
    const g = given['g'] ?? 9.80665;
    if (!Number.isFinite(C) || !Number.isFinite(rho) || !Number.isFinite(A) || !Number.isFinite(t) || !Number.isFinite(h) || !Number.isFinite(dp) || !Number.isFinite(g)) return Number.NaN;
    const m = C * rho * A * t * Math.sqrt(2 * (g * h + dp / rho));
    if (!Number.isFinite(m)) return Number.NaN;
    return m;
  }],
  [sandCakeBending, 'sigma', (given) => {
    const K = given['K']!;
    const dp = given['dp']!;
    const s = given['s']!;
    const d = given['d']!;
    if (!Number.isFinite(K) || !Number.isFinite(dp) || !Number.isFinite(s) || !Number.isFinite(d)) return Number.NaN;
    const sigma = K * dp * (s / d) ** 2;
    if (!Number.isFinite(sigma)) return Number.NaN;
    return sigma;
  }],
  [sandCakeShear, 'tau', (given) => {
    const dp = given['dp']!;
    const A = given['A']!;
    const P = given['P']!;
    const d = given['d']!;
    if (!Number.isFinite(dp) || !Number.isFinite(A) || !Number.isFinite(P) || !Number.isFinite(d)) return Number.NaN;
    const tau = dp * A / (P * d);
    if (!Number.isFinite(tau)) return Number.NaN;
    return tau;
  }],
  [sandLift, 'F', (given) => {
    const rho = given['rho']!;
    const h = given['h']!;
    const A = given['A']!;
    const g = given['g'] ?? 9.80665;
    if (!Number.isFinite(rho) || !Number.isFinite(h) || !Number.isFinite(A) || !Number.isFinite(g)) return Number.NaN;
    const F = rho * g * h * A;
    if (!Number.isFinite(F)) return Number.NaN;
    return F;
  }],
  [sandWeight, 'm_w', (given) => {
    const F = given['F']!;
    const F_c = given['F_c']!;
    const k = given['k']!;
    const m_c = given['m_c']!;
    const g = given['g'] ?? 9.80665;
    if (!Number.isFinite(F) || !Number.isFinite(F_c) || !Number.isFinite(k) || !Number.isFinite(m_c) || !Number.isFinite(g)) return Number.NaN;
    const m_w = k * (F + F_c) / g - m_c;
    if (!Number.isFinite(m_w)) return Number.NaN;
    return m_w;
  }],
  [vacuumAmbient, 'p', (given) => {
    const p_0 = given['p_0']!;
    const z = given['z']!;
    const H = given['H'] ?? 44330.76923;
    const n = given['n'] ?? 5.255876;
    if (!Number.isFinite(p_0) || !Number.isFinite(z) || !Number.isFinite(H) || !Number.isFinite(n)) return Number.NaN;
    const p = p_0 * (1 - z / H) ** n;
    if (!Number.isFinite(p)) return Number.NaN;
    return p;
  }],
  [vacuumAtCavity, 'dp', (given) => {
    const dp_g = given['dp_g']!;
    const L_c = given['L_c']!;
    const K_d = given['K_d']!;
    const L_d = given['L_d']!;
    const K_c = given['K_c']!;
    if (!Number.isFinite(dp_g) || !Number.isFinite(L_c) || !Number.isFinite(K_d) || !Number.isFinite(L_d) || !Number.isFinite(K_c)) return Number.NaN;
    const dp = dp_g * L_c * K_d / (L_c * K_d + L_d * K_c);
    if (!Number.isFinite(dp)) return Number.NaN;
    return dp;
  }],
  [vacuumForce, 'F', (given) => {
    const dp = given['dp']!;
    const d = given['d']!;
    if (!Number.isFinite(dp) || !Number.isFinite(d)) return Number.NaN;
    const F = dp * Math.PI * d ** 2 / 4;
    if (!Number.isFinite(F)) return Number.NaN;
    return F;
  }],
  [vacuumGauge, 'p', (given) => {
    const p_amb = given['p_amb']!;
    const p_g = given['p_g']!;
    if (!Number.isFinite(p_amb) || !Number.isFinite(p_g)) return Number.NaN;
    const p = p_amb - p_g;
    if (!Number.isFinite(p)) return Number.NaN;
    if (!(p_g <= p_amb)) return Number.NaN;
    return p;
  }],
  [vacuumHead, 'h', (given) => {
    const dp = given['dp']!;
    const rho = given['rho']!;
    const g = given['g'] ?? 9.80665;
    if (!Number.isFinite(dp) || !Number.isFinite(rho) || !Number.isFinite(g)) return Number.NaN;
    const h = dp / (rho * g);
    if (!Number.isFinite(h)) return Number.NaN;
    return h;
  }],
  [vacuumPenetration, 'p', (given) => {
    const gamma = given['gamma']!;
    const theta = given['theta']!;
    const r = given['r']!;
    if (!Number.isFinite(gamma) || !Number.isFinite(theta) || !Number.isFinite(r)) return Number.NaN;
    const p = 2 * gamma * Math.abs(Math.cos(theta)) / r;
    if (!Number.isFinite(p)) return Number.NaN;
    return p;
  }],
];

import type { Check, Result, Values } from '../../core/model.ts';
import type { SolverOf } from '../../core/written.ts';
import { workAfter } from './after.ts';
import { workChain } from './chain.ts';
import { judgeCrucible, workCharge } from './charge.ts';
import { judgeFeeding } from './feeding.ts';
import { workCooling, workFreezing } from './freezing.ts';
import { startLedger, type Ledger } from './ledger.ts';
import { noteLimits } from './limits.ts';
import { workHazards } from './hazards.ts';
import { judgeMelt } from './melt.ts';
import { judgeMould } from './mould.ts';
import { outputs } from './outputs.ts';
import { judgeBlowBack, judgeEdge, judgeGateSpeed, judgeGauge, workDrive } from './pressure.ts';
import { judgeEntry, judgeRaces, workRace } from './race.ts';
import { judgeDryness, judgeFume } from './safety.ts';
import { judgeLift, judgePenetration, judgeSand } from './sand.ts';
import { readSections, type Section } from './sections.ts';
import { judgeWarming } from './warming.ts';
import { startWorking, type Working } from './working.ts';

const surface = (sections: readonly Section[]): number =>
  sections.reduce((sum, { volume, modulus }) => sum + volume / modulus, 0);

/**
 * Every decision of one pour, in the order it is taken. Pure; what is not known is left out and said in a note.
 * Without `warming` the hours in oven or kiln are left out: nothing else hangs on them, and their series cost
 * more than all the rest, so trials and searches for another check go without.
 */
export function runPlan(inputs: Values, { warming }: { readonly warming: boolean }): Result {
  const working = startWorking(inputs);
  const checks = decide(working, warming);
  const values = Object.fromEntries(
    outputNames.flatMap((name) => {
      const value = working.kept.get(name);
      return value === undefined ? [] : [[name, value]];
    }),
  );
  return { values, steps: working.steps, checks, notes: working.notes };
}

/**
 * The same plan with numbers only, without the warming: for what is worked hundreds of times over. The
 * ledger then holds what `runPlan` gives as values; the checks have their margins and verdicts only. The
 * equations written out as code may be handed in, for those who try often; only they carry that code.
 */
export function tryPlan(inputs: Values, ledger: Ledger = startLedger(), solverOf?: SolverOf): Check[] {
  return trialsOf(inputs, ledger, solverOf)();
}

/** The same trial again and again, of inputs whose numbers are changed in place between one and the next. */
export function trialsOf(inputs: Values, ledger: Ledger, solverOf?: SolverOf): () => Check[] {
  const working = startWorking(inputs, ledger, solverOf);
  return () => {
    ledger.clear();
    return decide(working, false);
  };
}

const outputNames = Object.keys(outputs);

function decide(working: Working, warming: boolean): Check[] {
  const sections = readSections(working);
  const charge = workCharge(working, sections);
  const crucible = judgeCrucible(working, charge);
  const cooled = working.text('part.by') === 'volume' ? working.number('part.area') : surface(sections);
  const drive = workDrive(working, charge, cooled);
  const gate = workChain(working, charge, drive);
  const cooling = workCooling(working);
  const races = sections.map((section) =>
    workRace(working, section, sections, gate, drive, cooling, workFreezing(working, section, cooling)),
  );
  if (sections.length === 0)
    working.note('No sections are given: whether it fills, and where it shrinks, is not worked.');

  const checks = [
    ...crucible,
    ...judgeRaces(working, races, drive),
    ...judgeMould(working, races, cooling),
    ...(warming ? judgeWarming(working) : []),
    ...judgeEntry(working, races, drive),
    ...judgeGateSpeed(working, drive),
    ...judgeEdge(working, drive),
    ...judgeSand(working),
    ...judgeLift(working, drive),
    ...judgePenetration(working, drive),
    ...judgeGauge(working, drive),
    ...judgeFeeding(working, charge, sections, gate),
    ...judgeMelt(working, charge),
    ...judgeDryness(working),
    ...judgeBlowBack(working, drive),
    ...judgeFume(working),
  ];
  workHazards(working, charge, drive);
  workAfter(working, charge, sections, races, cooling);
  if (!working.trial) noteLimits(working, races);
  return checks;
}

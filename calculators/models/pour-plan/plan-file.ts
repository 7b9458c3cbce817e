import type { Model } from '../../core/model.ts';
import { checkWritten, isRecord, type Written } from './written.ts';

export const planFormat = 'warm-mould-plan';
export const planVersion = 1;

/** A plan as it is kept in a file: the name, and the inputs as texts with their units. */
export interface PlanFile {
  readonly name: string;
  readonly inputs: Written;
}

export interface ReadPlan extends PlanFile {
  /** What could not be read, one sentence each; everything else is kept. */
  readonly problems: readonly string[];
}

/** The text of a plan's file: versioned JSON, the same from the page and the command line. */
export function writePlanFile({ name, inputs }: PlanFile): string {
  return `${JSON.stringify({ format: planFormat, version: planVersion, name, inputs }, null, 2)}\n`;
}

/** Reads a plan's file. Never throws: what is not a plan at all comes back empty, with the reason. */
export function readPlanFile(text: string, model: Model): ReadPlan {
  const nothing = (problem: string): ReadPlan => ({ name: 'Plan', inputs: {}, problems: [problem] });
  let parsed: unknown;
  try {
    // A byte order mark comes from some editors.
    parsed = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return nothing('This is not a plan: the file is not JSON, or it was cut short.');
  }
  if (!isRecord(parsed)) return nothing('This is not a plan: the file holds no names and values.');
  if (parsed['format'] !== planFormat) {
    return nothing(`This is not a plan: its format is not "${planFormat}".`);
  }
  const problems: string[] = [];
  const version = parsed['version'];
  if (typeof version !== 'number')
    problems.push('The file does not say its version; it is read as version 1.');
  else if (version > planVersion) {
    problems.push(
      `The file is version ${version} and this reads ${planVersion}: what is new in it is left out.`,
    );
  }
  const name = typeof parsed['name'] === 'string' && parsed['name'].trim() !== '' ? parsed['name'] : 'Plan';
  const raw = parsed['inputs'];
  if (!isRecord(raw)) {
    return {
      name,
      inputs: {},
      problems: [...problems, 'The inputs could not be read; the plan stands at its start.'],
    };
  }
  const checked = checkWritten(model, raw);
  return { name, inputs: checked.inputs, problems: [...problems, ...checked.problems] };
}

import type { ResolvedMaterials } from '../../models/inputs.ts';
import type { Exercise } from '../definition.ts';
import { readExercise } from '../reading.ts';
import {
  formulasOf,
  modelsOf,
  readSetData,
  withHash,
  type ExerciseData,
  type KeptFormula,
  type Rules,
  type SetFile,
  type SetQuestion,
} from './set-file.ts';
import { canonical } from './sha256.ts';
import type { Read } from './untrusted.ts';

/** An exercise of the course as it can be chosen for a set. */
export interface BankExercise {
  readonly id: string;
  readonly exercise: ExerciseData;
  readonly unit: string;
  readonly lesson: string;
  /** What its outcome says. */
  readonly outcome: string;
}

/** All a set can be built from. */
export interface Bank {
  readonly library: string;
  readonly exercises: readonly BankExercise[];
  readonly formulas: Readonly<Record<string, KeptFormula>>;
  readonly materials: ResolvedMaterials;
  readonly stock: Exclude<SetFile['stock'], undefined>;
  readonly models: Readonly<Record<string, string>>;
}

/** What the instructor changed of an exercise of the course; the rest is as it stands there. */
export interface Pick {
  readonly id: string;
  readonly marks?: number;
  readonly tolerance?: string;
  /** A question of the instructor's own, in the same shape as an exercise's file. */
  readonly own?: ExerciseData;
  /** What the outcome of an own question says. */
  readonly outcome?: string;
}

/** A set as it is being made: what the builder keeps on the device. */
export interface Draft {
  readonly id: string;
  readonly edition: number;
  readonly title: string;
  readonly note: string;
  readonly asks: string;
  readonly rules: Rules;
  readonly seal?: string | undefined;
  readonly picks: readonly Pick[];
}

/** The set a draft stands for, with its snapshot. The reason is a sentence when it is not yet one. */
export function setFrom(draft: Draft, bank: Bank): Read<SetFile> {
  if (draft.picks.length === 0) return { ok: false, reason: 'Choose at least one exercise.' };
  if (draft.title.trim() === '') return { ok: false, reason: 'Give the set a title.' };
  const questions: SetQuestion[] = [];
  const outcomes: Record<string, string> = {};
  const read: Exercise[] = [];
  try {
    for (const pick of draft.picks) {
      const found = bank.exercises.find(({ id }) => id === pick.id);
      const data = pick.own ?? found?.exercise;
      if (!data) return { ok: false, reason: `There is no exercise "${pick.id}" here.` };
      const exercise = changed(data, pick);
      const whole = readExercise(pick.id, exercise, { leastMistakes: 0 });
      questions.push({ id: pick.id, exercise });
      outcomes[whole.outcome] = pick.own ? (pick.outcome ?? whole.outcome) : found!.outcome;
      read.push(whole);
    }
  } catch (error) {
    return { ok: false, reason: error instanceof Error ? error.message : String(error) };
  }
  const models = [...new Set(read.flatMap(modelsOf))].sort();
  const formulas = [...new Set(read.flatMap(formulasOf))].sort();
  const lost =
    formulas.find((id) => !Object.hasOwn(bank.formulas, id)) ??
    models.find((id) => !Object.hasOwn(bank.models, id));
  if (lost !== undefined) return { ok: false, reason: `There is no calculation "${lost}" here.` };
  const file = withHash({
    format: 'warm-mould-set',
    version: 1,
    id: draft.id,
    edition: draft.edition,
    title: draft.title.trim(),
    ...(draft.note.trim() !== '' && { note: draft.note.trim() }),
    asks: draft.asks.trim() || 'Your name',
    library: bank.library,
    rules: draft.rules,
    ...(draft.seal !== undefined && { seal: draft.seal }),
    questions,
    outcomes,
    formulas: Object.fromEntries(formulas.map((id) => [id, bank.formulas[id]!])),
    materials: models.length > 0 ? bank.materials : {},
    ...(read.some(({ kind }) => kind === 'design') && { stock: bank.stock }),
    models: Object.fromEntries(models.map((id) => [id, bank.models[id]!])),
  });
  const check = readSetData(JSON.parse(JSON.stringify(file)));
  return check.ok ? { ok: true, value: file } : check;
}

/** The draft a set was made of, found again: exercises that stand otherwise in the course count as one's own. */
export function draftFrom(file: SetFile, bank: Bank): Draft {
  const { id, edition, title, note = '', asks, rules, seal, questions, outcomes } = file;
  return {
    id,
    edition,
    title,
    note,
    asks,
    rules,
    seal,
    picks: questions.map(({ id: own, exercise }) => {
      const data = bank.exercises.find((one) => one.id === own)?.exercise;
      const [marks, tolerance] = [Number(exercise['marks']), exercise['tolerance']];
      const pick: Pick = {
        id: own,
        ...(data?.['marks'] !== marks && { marks }),
        ...(data?.['tolerance'] !== tolerance && { tolerance: String(tolerance) }),
      };
      if (data && canonical(changed(data, pick)) === canonical(exercise)) return pick;
      return { id: own, own: exercise, outcome: outcomes[String(exercise['outcome'])] ?? '' };
    }),
  };
}

/** The exercise with its marks and tolerance as the instructor wants them. Marks of parts keep their proportions. */
function changed(data: ExerciseData, { marks, tolerance }: Pick): ExerciseData {
  const parts = data['parts'] as readonly Readonly<Record<string, unknown>>[] | undefined;
  const before = parts?.reduce((sum, part) => sum + Number(part['marks'] ?? 1), 0);
  const wanted = marks ?? before ?? Number(data['marks']);
  return {
    ...data,
    marks: wanted,
    ...(tolerance !== undefined && (data['kind'] === 'number' || data['kind'] === 'steps') && { tolerance }),
    ...(parts && { parts: shared(parts, wanted, before!) }),
  };
}

/** Whole marks for each part, the largest remainders first, at least one each. */
function shared(parts: readonly Readonly<Record<string, unknown>>[], wanted: number, before: number) {
  const exact = parts.map((part) => (Number(part['marks'] ?? 1) * wanted) / before);
  const whole = exact.map((marks) => Math.max(1, Math.floor(marks)));
  const byRemainder = exact
    .map((marks, at) => [marks - Math.floor(marks), at] as const)
    .sort((a, b) => b[0] - a[0] || a[1] - b[1]);
  for (const [, at] of byRemainder) if (whole.reduce((sum, n) => sum + n, 0) < wanted) whole[at]! += 1;
  return parts.map((part, at) => ({ ...part, marks: whole[at]! }));
}

/** A set of exercises of the course alone, as a list short enough for a square code. Undefined for any other. */
export function shortSet(draft: Draft, file: SetFile): string | undefined {
  if (draft.picks.some(({ own }) => own !== undefined)) return undefined;
  const { rules } = draft;
  return JSON.stringify([
    1,
    file.id,
    file.edition,
    file.title,
    file.note ?? '',
    file.asks,
    [
      rules.numbers,
      rules.feedback,
      Number(rules.hints),
      Number(rules.worked),
      rules.keep,
      rules.opens ?? '',
      rules.closes ?? '',
    ],
    file.seal ?? '',
    draft.picks.map(({ id, marks, tolerance }) =>
      marks === undefined && tolerance === undefined ? id : [id, marks ?? 0, tolerance ?? ''],
    ),
    file.hash.slice(0, 24),
  ]);
}

/** The set such a list stands for, built again here; refused when it does not come out the same as it was made. */
export function setFromShort(data: unknown, bank: Bank): Read<SetFile> {
  const no: Read<SetFile> = {
    ok: false,
    reason: 'The link is not whole. Ask for it again, or for the file of the set.',
  };
  if (!Array.isArray(data) || data[0] !== 1 || !Array.isArray(data[6]) || !Array.isArray(data[8])) return no;
  const [, id, edition, title, note, asks, ruled, seal, picks, hash] = data as unknown[];
  const [numbers, feedback, hints, worked, keep, opens, closes] = ruled as unknown[];
  const rules = {
    numbers,
    feedback,
    hints: hints === 1,
    worked: worked === 1,
    keep,
    ...(opens !== '' && { opens }),
    ...(closes !== '' && { closes }),
  } as Rules;
  const draft: Draft = {
    id: String(id),
    edition: Number(edition),
    title: String(title),
    note: String(note),
    asks: String(asks),
    rules,
    ...(typeof seal === 'string' && seal !== '' && { seal }),
    picks: (picks as unknown[]).map((pick) => {
      const [own, marks, tolerance] = (Array.isArray(pick) ? pick : [pick, 0, '']) as unknown[];
      return {
        id: String(own),
        ...(typeof marks === 'number' && marks > 0 && { marks }),
        ...(typeof tolerance === 'string' && tolerance !== '' && { tolerance }),
      };
    }),
  };
  const built = setFrom(draft, bank);
  if (!built.ok) return built;
  if (typeof hash !== 'string' || hash.length !== 24 || !built.value.hash.startsWith(hash))
    return {
      ok: false,
      reason:
        'These pages have changed since the link was made, so it no longer gives the same set. Ask for the long link or the file.',
    };
  return built;
}

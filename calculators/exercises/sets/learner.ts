import type { Exercise, Variant } from '../definition.ts';
import { drawVariant } from '../variants.ts';
import type { GradedSet } from './set-file.ts';

/** A name as it is compared and drawn from: capitals, spacing and the way accents are coded make no difference. */
export function learnerKey(name: string): string {
  return name.normalize('NFKC').trim().replace(/\s+/gu, ' ').toLowerCase();
}

/** A name as typed, without what no name holds: control signs, and more than 120 characters. */
export function plainName(text: string): string {
  const one = text
    .replace(/[\p{Cc}\u2028\u2029]+/gu, ' ')
    .replace(/\s+/gu, ' ')
    .trim();
  return [...one].slice(0, 120).join('').trim();
}

/** The numbers and the order one learner gets in one question: by the set, the learner and the exercise alone. */
export function variantFor(
  set: Pick<GradedSet, 'id' | 'rules'>,
  learner: string,
  exercise: Exercise,
): Variant {
  return drawVariant(exercise, set.id, set.rules.numbers === 'own' ? learnerKey(learner) : '');
}

import { completeInputs, type ResolvedMaterials } from '../../../calculators/models/inputs.ts';
import { pourPlan } from '../../../calculators/models/pour-plan.ts';
import type { FoundSection } from '../../../calculators/pour-log/record.ts';
import type { Texts } from '../form-entries.ts';

/** What the plan says now, to be kept beside what was found: it may be changed afterwards. */
export function predictionOf(
  texts: Texts,
  books: ResolvedMaterials,
): { readonly values: Readonly<Record<string, number>>; readonly sections: readonly FoundSection[] } {
  const { values } = completeInputs(pourPlan, texts, books);
  const result = pourPlan.run(values);
  const rows = Array.isArray(values['sections']) ? values['sections'] : [];
  const sections = rows.map((row, n): FoundSection => {
    const at = (what: string): number | undefined => result.values[`sections.${n + 1}.${what}`];
    const [modulus, margin] = [at('modulus'), at('margin')];
    return {
      name: typeof row['name'] === 'string' && row['name'] !== '' ? row['name'] : `Section ${n + 1}`,
      filled: 'not looked at',
      ...(modulus === undefined ? {} : { modulus }),
      ...(margin === undefined ? {} : { margin }),
    };
  });
  return { values: result.values, sections };
}

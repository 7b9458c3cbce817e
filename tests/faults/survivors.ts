/**
 * Planted faults that no check catches, each with the reason it cannot be caught or does not matter. Formula
 * id, then the fault as `tests/faults.test.ts` names it. A fault that is caught must not be listed. Changes
 * that leave the equation saying the same are not faults and never get here.
 */
export const survivors: Readonly<Record<string, Readonly<Record<string, string>>>> = {};

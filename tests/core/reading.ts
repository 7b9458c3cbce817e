import { readQuantity, type QuantityField, type Reading } from '../../calculators/core/quantity.ts';

export const length: QuantityField = { unit: 'm', show: 'mm' };
export const heat: QuantityField = { unit: 'K', show: '°C' };
export const difference: QuantityField = { unit: 'ΔK', show: 'Δ°C' };
export const mass: QuantityField = { unit: 'kg', show: 'g' };
export const share: QuantityField = { unit: '1', show: '%' };

export type Read = Extract<Reading, { ok: true }>;

export function read(text: string, field: QuantityField): Read {
  const reading = readQuantity(text, field);
  if (!reading.ok) throw new Error(`${text}: ${reading.message}`);
  return reading;
}

export function refusal(text: string, field: QuantityField): string {
  const reading = readQuantity(text, field);
  if (reading.ok) throw new Error(`${text} was read as ${reading.value}`);
  return reading.message;
}

import { describe, expect, it } from 'vitest';
import { quantity } from '../calculators/core/quantity.ts';
import { unit } from '../calculators/core/units.ts';
import { safetyLimits, type LimitKind, type SafetyLimit } from '../calculators/safety-limits.ts';
import { sources } from '../calculators/sources.ts';

const nameOf = ({ agent, setBy, kind }: SafetyLimit): string => `${agent}, ${setBy}, ${kind}`;

describe('the limits for what is breathed', () => {
  it('are each stated once', () => {
    expect(new Set(safetyLimits.map(nameOf)).size).toBe(safetyLimits.length);
  });

  it('are each a share of the air or a mass in it, above nought', () => {
    for (const limit of safetyLimits) {
      const symbol = limit.value.slice(limit.value.indexOf(' ') + 1);
      expect([unit('ppm').dimension, unit('mg/m³').dimension], nameOf(limit)).toContainEqual(
        unit(symbol).dimension,
      );
      expect(quantity(limit.value), nameOf(limit)).toBeGreaterThan(0);
    }
  });

  it('each name a source and a place in it, and a day exactly when they were read', () => {
    for (const limit of safetyLimits) {
      expect(sources[limit.source.key], nameOf(limit)).toBeDefined();
      expect(limit.source.at.length, nameOf(limit)).toBeGreaterThan(3);
      expect(limit.source.how === 'read', nameOf(limit)).toBe(limit.read !== undefined);
      if (limit.read === undefined) continue;
      expect(new Date(limit.read).toISOString().slice(0, 10), nameOf(limit)).toBe(limit.read);
    }
  });

  it('rise with the shortness of the exposure, one agent and one setter at a time', () => {
    const order: readonly LimitKind[] = [
      'action level',
      'eight hours',
      'fifteen minutes',
      'ceiling',
      'danger to life',
    ];
    for (const limit of safetyLimits) {
      const stricter = safetyLimits.filter(
        (other) =>
          other.agent === limit.agent &&
          other.setBy === limit.setBy &&
          order.indexOf(other.kind) < order.indexOf(limit.kind),
      );
      for (const other of stricter)
        expect(quantity(limit.value), `${nameOf(limit)} against ${other.kind}`).toBeGreaterThan(
          quantity(other.value),
        );
    }
  });

  it('cover silica, lead and carbon monoxide in the United States and Great Britain, and zinc oxide in one', () => {
    const has = (agent: string, setBy: SafetyLimit['setBy']): boolean =>
      safetyLimits.some((limit) => limit.agent === agent && limit.setBy === setBy);
    for (const agent of ['respirable crystalline silica', 'lead', 'carbon monoxide']) {
      expect(has(agent, 'US'), agent).toBe(true);
      expect(has(agent, 'GB'), agent).toBe(true);
    }
    expect(has('zinc oxide fume', 'US')).toBe(true);
  });
});

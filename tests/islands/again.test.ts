import { describe, expect, it } from 'vitest';
import { afterMarking, dayOf, dueOf, gaps, type Return } from '../../src/islands/again.ts';

describe('an exercise that comes back', () => {
  it('comes back the day after it was wrong', () => {
    expect(afterMarking(undefined, false, '2026-02-28')).toEqual({ due: '2026-03-01', right: 0 });
  });

  it('does not come back when it was right at the first go', () => {
    expect(afterMarking(undefined, true, '2026-02-28')).toBeUndefined();
  });

  it('waits longer each time it is right on its day, and then is done', () => {
    const waits: number[] = [];
    for (let kept: Return | undefined = { due: '2026-01-01', right: 0 }; kept;) {
      const next: Return | undefined = afterMarking(kept, true, kept.due);
      if (next) waits.push((Date.parse(next.due) - Date.parse(kept.due)) / 86_400_000);
      kept = next;
    }
    expect(waits).toEqual(gaps.slice(1));
  });

  it('learns nothing from being done again the same day', () => {
    const kept: Return = { due: '2026-01-02', right: 0 };
    expect(afterMarking(kept, true, '2026-01-01')).toBe(kept);
  });

  it('starts again when it is wrong', () => {
    expect(afterMarking({ due: '2026-01-01', right: 3 }, false, '2026-01-05')).toEqual({
      due: '2026-01-06',
      right: 0,
    });
  });

  it('is listed longest due first, and not before its day', () => {
    const returns = new Map<string, Return>([
      ['late', { due: '2026-01-03', right: 0 }],
      ['b', { due: '2026-01-02', right: 0 }],
      ['a', { due: '2026-01-02', right: 1 }],
      ['tomorrow', { due: '2026-01-05', right: 0 }],
    ]);
    expect(dueOf(returns, '2026-01-04')).toEqual(['a', 'b', 'late']);
  });

  it('knows the day by the clock of the device', () => {
    expect(dayOf(new Date(2026, 0, 5, 23, 59))).toBe('2026-01-05');
  });
});

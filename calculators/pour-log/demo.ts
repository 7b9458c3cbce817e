import { createRandom } from '../core/random.ts';
import type { FoundSection, Pour } from './record.ts';

/** Fourteen pours in silicon bronze of the mill's workshop, invented: nobody poured them. Drawn by a rule, always the same. */
export function demoLog(): Pour[] {
  const random = createRandom('log of the mill');
  const parts = [
    {
      name: 'Lamp shield',
      mass: 0.0469,
      sprue: 0.052,
      sections: [
        ['Webs', 0.43e-3, 0.95],
        ['Frame', 1.13e-3, 2.4],
        ['Lugs', 1.42e-3, 3.1],
      ],
    },
    {
      name: 'Sluice-gate hook',
      mass: 0.1107,
      sprue: 0.178,
      sections: [
        ['Shank', 2e-3, 1.3],
        ['Bend', 2.57e-3, 2.2],
        ['Eye', 2.2e-3, 2.8],
      ],
    },
    {
      name: 'Gauge board numeral',
      mass: 0.0103,
      sprue: 0.021,
      sections: [
        ['Foot', 2e-3, 4],
        ['Stem', 1.09e-3, 1.2],
        ['Serif', 0.62e-3, 0.7],
      ],
    },
  ] as const;
  const round = (x: number, figures: number): number => Number(x.toPrecision(figures));
  return Array.from({ length: 14 }, (_, n): Pour => {
    const part = parts[n % parts.length]!;
    const warmth = 0.75 + 0.5 * random.uniform();
    const sections = part.sections.map(([name, modulus, usual]): FoundSection => {
      const margin = usual * warmth;
      const chance = 1 / (1 + Math.exp(-4 * Math.log(margin / 0.9)));
      const full = random.uniform() < chance;
      const timed = modulus > 1e-3;
      return {
        name,
        filled: full ? 'full' : random.uniform() < 0.7 ? 'part' : 'none',
        modulus,
        margin: round(margin, 3),
        ...(timed ? { froze: round(1.9e6 * modulus ** 2 * Math.exp(0.15 * random.normal()), 2) } : {}),
      };
    });
    const missing = sections.filter(({ filled }) => filled !== 'full').length * 0.04 * part.mass;
    const charge = round(part.mass + part.sprue + 0.004, 4);
    const rest = part.sprue + 0.004 - (0.016 + 0.004 * random.normal()) * charge;
    return {
      id: `mill-${n + 1}`,
      day: `2026-0${1 + Math.floor(n / 5)}-${String(3 + ((n * 6) % 25)).padStart(2, '0')}`,
      plan: { name: part.name, inputs: { metal: 'silicon-bronze' } },
      predicted: { charge, 'part.mass': part.mass },
      did: {
        metal: 1353 + round(40 * random.uniform(), 2),
        mould: 393 + round(60 * random.uniform(), 2),
        charge,
        pouring: round(1 + random.uniform(), 2),
      },
      found: {
        sections,
        casting: round(part.mass - missing, 4),
        rest: round(rest, 4),
        defects: missing > 0 ? ['misrun'] : [],
        note: missing > 0 ? 'Poured a little slowly.' : '',
        photos: [],
      },
      marks: ['invented'],
      invented: true,
    };
  });
}

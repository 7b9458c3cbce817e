import type { Race } from './race.ts';
import type { Working } from './working.ts';

const thinShell = 3e-3;
const longRange = 60;
const oxideSkin = /aluminium|silicon|magnesium/;
const hotMould = 673.15;

/** Where the sums above do not hold, said beside them. */
export function noteLimits(working: Working, races: readonly Race[]): void {
  const { number, text, note } = working;
  const thin = races
    .filter((race) => race.section.thickness < thinShell)
    .map((race) => race.section.name.toLowerCase());
  if (thin.length > 0) {
    note(
      `Under 3 mm (${thin.join(', ')}) a freezing time is known to a factor of two at best: contact with the sand, the latent heat and the curvature each move it as much as a hundred degrees of mould.`,
    );
  }
  if (number('metal.liquidus') - number('metal.solidus') > longRange) {
    note(
      'This alloy freezes over a long range: it does not feed along a wall, shrinks as fine pores in the middle, and its stop rule is a guess. Plate and bar feeding rules are for short ranges.',
    );
  }
  if (oxideSkin.test(text('metal'))) {
    note(
      'This metal carries an oxide skin. It holds back more than clean surface tension does, so thin webs and sharp edges come out worse than the sum, and laps show where two fronts meet.',
    );
  }
  if (number('mould.temperature') > hotMould && thin.length > 0) {
    note(
      'A thin shell in a hot mould is not followed here: the mould takes its heat through, so the freezing time is the low end and the grain is coarse.',
    );
  }
  if ((working.kept.get('steam.water') ?? 0) > 0 && number('mould.moisture') > 0.01) {
    note('In wet sand some of the steam condenses on its way out: the gas pressure here is the high end.');
  }
  note(
    'Not worked: hot tearing where a thin section is solid while a thick one still shrinks, laps where fronts meet, warping, and leaks at the joint. Pour one and look.',
  );
}

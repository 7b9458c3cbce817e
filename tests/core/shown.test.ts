import { describe, expect, it } from 'vitest';
import { typedAndShown } from '../../calculators/core/shown.ts';

describe('a quantity and the unit it is shown in', () => {
  it.each([
    ['150 mm ± 2 ~ in', ['150 mm ± 2', 'in']],
    ['150mm~in', ['150mm', 'in']],
    ['~ in', ['', 'in']],
    ['20 °C ~ °F', ['20 °C', '°F']],
    ['150 mm', ['150 mm']],
    ['about ~ 5 mm', ['about ~ 5 mm']],
    ['5 mm ~', ['5 mm ~']],
    ['1 ~ 2 mm ~ in', ['1 ~ 2 mm', 'in']],
  ])('parts %s', (text, parts) => expect(typedAndShown(text)).toEqual(parts));
});

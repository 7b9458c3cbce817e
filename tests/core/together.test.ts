import { describe, expect, it } from 'vitest';
import { readQuantity } from '../../calculators/core/quantity.ts';
import { together } from '../../calculators/core/together.ts';
import { unitLabel } from '../../calculators/core/print.ts';
import { unitSymbols } from '../../calculators/core/units.ts';
import { pageTogether } from '../../src/together/page.ts';

const seen = (text: string): string => text.replaceAll('\u00a0', '~');

describe('a number and its unit', () => {
  it.each([
    ['sand at 150 to 200 °C.', 'sand at 150 to 200~°C.'],
    ['7 by 8 mm, 1.5 kg and 3 m', '7 by 8~mm, 1.5~kg and 3~m'],
    ['684 J/(m²·K·√s) and 30 % of it', '684~J/(m²·K·√s) and 30~% of it'],
    ['12 × 10⁻⁵ m and ± 2 %', '12~×~10⁻⁵~m and ±~2~%'],
    ['3 men, 5 minutes, 4 kilns, 2 in a row', '3 men, 5 minutes, 4 kilns, 2 in a row'],
    ['7 × 8 × 12 mm', '7 × 8 × 12~mm'],
    ['2 ½ h', '2 ½~h'],
  ])('of “%s” stay together', (text, expected) => {
    expect(seen(together(text))).toBe(expected);
    expect(seen(together(together(text)))).toBe(expected);
  });

  it('stay together when the number stands in a piece before', () => {
    expect(seen(together(' g of water', '5'))).toBe('~g of water');
    expect(seen(together(' grams', '5'))).toBe(' grams');
    expect(seen(together(' g of water', 'five'))).toBe(' g of water');
  });

  it('stay together for every unit there is but those that read as words', () => {
    const apart = unitSymbols
      .map((symbol) => unitLabel(symbol))
      .filter((label) => label !== '' && label !== '°' && !together(`5 ${label}`).includes('\u00a0'));
    expect(apart).toEqual(['rad', 'in', 'thou', 'in²', 'in³', '1/K']);
  });

  it('read back as they were', () => {
    expect(readQuantity(together('200 °C'), { unit: 'K', show: '°C' })).toMatchObject({
      ok: true,
      value: 473.15,
    });
    expect(readQuantity(together('684 J/(m²·K·√s)'), { unit: 'J·s^-½/(m²·K)' })).toMatchObject({
      ok: true,
      value: 684,
    });
    expect(readQuantity(together('684 W·√s/(m²·K)'), { unit: 'J·s^-½/(m²·K)' })).toMatchObject({
      ok: true,
      value: 684,
    });
    expect(readQuantity(together('1.2 × 10⁻³ m ± 2 %'), { unit: 'm' })).toMatchObject({
      ok: true,
      value: 0.0012,
    });
  });
});

describe('a page', () => {
  it('keeps its tags, their attributes, its scripts and what is copied', () => {
    const page = `<p title="5 mm > 4 mm">5 mm</p><script>a = '5 mm'</script><code>5 mm</code><b>5</b> mm<!-- 5 mm -->`;
    expect(seen(pageTogether(page))).toBe(
      `<p title="5 mm > 4 mm">5~mm</p><script>a = '5 mm'</script><code>5 mm</code><b>5</b>~mm<!-- 5 mm -->`,
    );
  });
});

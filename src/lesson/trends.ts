import { standingOf, trends as published, type Standing, type Trend } from './published.ts';

const words: Readonly<Record<Standing, string>> = {
  within: 'within what is published',
  below: 'less than any published',
  above: 'more than any published',
  'partly outside': 'partly outside what is published',
};

const two = (value: number): string => value.toFixed(2);

/** Published trends of fluidity beside what the race of fronts gives, worked at build. */
export const fluidity = published.map((trend: Trend) => {
  const here = trend.here();
  const [least, most] = here.map(two) as [string, string];
  return {
    ...trend,
    here: least === most ? least : `${least} to ${most}`,
    stands: words[standingOf(trend, here)],
    published: trend.published.map((one) => ({ ...one, value: two(one.value) })),
  };
});

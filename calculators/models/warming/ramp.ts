import { rootBetween } from '../../core/bracket.ts';
import { biotOf, type Body, type Stuff } from './body.ts';
import { evenStart } from './series.ts';

/** Enough modes for a lag, whose terms fall as the square of the root. */
const early = 4e-3;
/** Stands for nothing under a logarithm. */
const tiny = 1e-300;

interface Term {
  /** Share of the lag, s. */
  readonly lag: number;
  /** 1/s */
  readonly rate: number;
}

/**
 * The lag of the middle behind a kiln that climbs steadily, as terms that build up and fade each at its own
 * rate: for a long body under a long climb their sum is a²(1 + 2/Bi)/(2nα) seconds, n the directions of heat.
 */
function lagTerms(body: Body, stuff: Stuff, h: number): readonly Term[] {
  // The signs alternate: half of the last term stands for all that are cut off.
  const families = body.map(({ shape, half }) =>
    evenStart(shape, biotOf(h, half, stuff), early).modes.map(({ root, factor }, i, { length }) => ({
      factor: i === length - 1 ? factor / 2 : factor,
      rate: (stuff.alpha * root ** 2) / half ** 2,
    })),
  );
  const crossed = families.reduce((all, family) => {
    const products: { readonly factor: number; readonly rate: number }[] = [];
    for (const one of all)
      for (const other of family)
        products.push({ factor: one.factor * other.factor, rate: one.rate + other.rate });
    return products;
  });
  const terms = crossed.map(({ factor, rate }) => ({ lag: factor / rate, rate }));
  const least = 1e-8 * Math.max(...terms.map(({ lag }) => Math.abs(lag)));
  return terms.filter(({ lag }) => Math.abs(lag) > least).sort((a, b) => a.rate - b.rate);
}

export interface Lag {
  /** Kelvin the middle is behind when the climb ends. */
  readonly atEnd: number;
  /** Kelvin it would be behind if the climb never ended. */
  readonly steady: number;
  /** Seconds of holding until it is no more than `close` kelvin behind. */
  readonly holdFor: (close: number) => number;
}

/** Times its own e-folding time after which nothing of a term is left to see in a sum of doubles. */
const faded = 45;

/** The middle of a dry body behind a kiln that climbs `speed` K/s for `time` seconds. */
export function lagBehind(body: Body, stuff: Stuff, h: number): (speed: number, time: number) => Lag {
  const terms = lagTerms(body, stuff, h);
  return (speed, time) => lagOf(terms, speed, time);
}

function lagOf(terms: readonly Term[], speed: number, time: number): Lag {
  const ended = terms.map(({ lag, rate }) => ({ lag: lag * (1 - Math.exp(-rate * time)), rate }));
  const after = (hold: number): number => {
    let sum = 0;
    for (const { lag, rate } of ended) {
      // The slowest come first.
      if (rate * hold > faded) break;
      sum += lag * Math.exp(-rate * hold);
    }
    // After a very short climb the series, cut off, is a few thousandths too high: the lag is never more than the climb.
    return Math.min(speed * time, speed * sum);
  };
  const slowest = terms[0]?.rate ?? Number.POSITIVE_INFINITY;
  return {
    atEnd: after(0),
    steady: speed * terms.reduce((sum, { lag }) => sum + lag, 0),
    holdFor: (close) => {
      if (!(after(0) > close)) return 0;
      let high = 1 / slowest;
      while (after(high) > close) high *= 2;
      // In its logarithm the lag soon falls along a straight line, which the search goes straight to.
      return rootBetween((hold) => Math.log(Math.max(after(hold), tiny) / close), 0, high);
    },
  };
}

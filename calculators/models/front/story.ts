import { celsius, say } from '../pour-plan/say.ts';
import type { Front } from './race.ts';

/** How one stretch went, with its numbers, in a sentence. */
export function storyOf(front: Omit<Front, 'entered' | 'speed' | 'spare'>, length: number): string {
  const way = `${say(front.reached, 'mm')} of ${say(length, 'mm')}`;
  const solid = front.solid > 0 ? ` and ${say(front.solid, '%')} solid` : '';
  switch (front.ended) {
    case 'filled':
      return `Full after ${say(front.time, 's')}, the head of the stream at ${celsius(front.temperature)}${solid}.`;
    case 'froze':
      return `It freezes at ${way}, after ${say(front.time, 's')}.`;
    case 'waited':
      return `The metal stands at its mouth, easier ways taking it, until it is too stiff after ${say(front.time, 's')}.`;
    case 'gas':
      return `Gas that cannot leave holds the metal at ${way}.`;
    case 'held':
      return front.reached > 0
        ? `The pressure holds the metal at ${way}.`
        : `The metal does not enter: it presses with ${say(front.pressure, 'kPa')}, and the mouth resists with ${say(front.resists, 'kPa')}. No warmth changes that.`;
    case 'never':
      return 'The metal never comes to it: what is before it does not fill.';
  }
}

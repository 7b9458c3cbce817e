import { z } from 'astro/zod';
import { load } from 'js-yaml';
import misconceptionText from '../../content/misconceptions.yaml?raw';
import traineeText from '../../content/trainee-outcomes.yaml?raw';
import { readPlaces, type Place } from './course.ts';
import { whole } from '../lesson/whole.ts';

const misconceptionShape = z.array(
  z.strictObject({ id: z.string(), area: z.string(), belief: z.string(), truth: z.string() }),
);
const traineeShape = z.strictObject({
  foundry: z.array(z.strictObject({ id: z.string(), text: z.string() })),
  jewellery: z.array(z.strictObject({ id: z.string(), text: z.string() })),
});

export interface Caught {
  readonly belief: string;
  readonly truth: string;
  readonly area: string;
  /** The exercises that catch it. */
  readonly by: readonly { readonly id: string; readonly title: string }[];
}

/** What apprentices often believe, and which exercises catch it. */
export async function readMisconceptions(): Promise<Caught[]> {
  const exercises = await whole('exercises');
  return misconceptionShape.parse(load(misconceptionText)).map(({ id, ...rest }) => ({
    ...rest,
    by: exercises
      .filter(({ data }) => data.misconceptions.includes(id))
      .map((exercise) => ({ id: exercise.id, title: exercise.data.title })),
  }));
}

export interface Expected {
  readonly trade: string;
  readonly text: string;
  /** The outcomes of lessons that serve it. */
  readonly by: readonly { readonly place: Place; readonly text: string }[];
}

/** What the trade expects of a trainee, and the outcomes here that serve it. */
export async function readExpected(): Promise<Expected[]> {
  const places = await readPlaces();
  const { foundry, jewellery } = traineeShape.parse(load(traineeText));
  const of = (trade: string, list: typeof foundry): Expected[] =>
    list.map(({ id, text }) => ({
      trade,
      text,
      by: places.flatMap((place) =>
        place.lesson.data.outcomes
          .filter(({ serves }) => serves.includes(id))
          .map((outcome) => ({ place, text: outcome.text })),
      ),
    }));
  return [...of('Foundry', foundry), ...of('Jewellery and small art', jewellery)];
}

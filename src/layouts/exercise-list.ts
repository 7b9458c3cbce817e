import type { CollectionEntry } from 'astro:content';
import { whole } from '../lesson/whole.ts';
import { readPlaces, type Place } from './course.ts';

export interface PlacedExercise {
  readonly entry: CollectionEntry<'exercises'>;
  /** The lesson that sets it. */
  readonly place: Place;
}

/** Every exercise in the order of the course, with the lesson that sets it. */
export async function readExercises(): Promise<PlacedExercise[]> {
  const entries = new Map((await whole('exercises')).map((entry) => [entry.id, entry]));
  return (await readPlaces()).flatMap((place) =>
    place.lesson.data.exercises.map((id) => {
      const entry = entries.get(id);
      if (!entry)
        throw new Error(
          `content/lessons/${place.lesson.id}.mdx sets "${id}", but there is no content/exercises/${id}.yaml`,
        );
      return { entry, place };
    }),
  );
}

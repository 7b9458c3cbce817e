import type { CollectionEntry } from 'astro:content';
import { z } from 'astro/zod';
import { load } from 'js-yaml';
import text from '../../content/course.yaml?raw';
import { whole } from '../lesson/whole.ts';

const courseShape = z.strictObject({
  units: z.array(
    z.strictObject({
      id: z.string(),
      title: z.string(),
      question: z.string(),
      lessons: z.array(z.string()),
    }),
  ),
});

export type Lesson = CollectionEntry<'lessons'>;

export interface Unit {
  readonly id: string;
  readonly title: string;
  readonly question: string;
  readonly lessons: readonly Lesson[];
}

export interface Place {
  readonly unit: Unit;
  readonly lesson: Lesson;
  /** Of the lesson within the whole course, from 1. */
  readonly number: number;
  readonly previous?: Lesson;
  readonly next?: Lesson;
}

/** The course in order. Stops the build with a sentence when the list and the lessons do not agree. */
export async function readCourse(): Promise<Unit[]> {
  const entries = new Map((await whole('lessons')).map((lesson) => [lesson.id, lesson]));
  const { units } = courseShape.parse(load(text));
  const listed = new Set(units.flatMap((unit) => unit.lessons));
  for (const id of entries.keys()) {
    if (!listed.has(id))
      throw new Error(`content/lessons/${id}.mdx is in no unit; add it to content/course.yaml`);
  }
  return units.map((unit) => ({
    ...unit,
    lessons: unit.lessons.map((id) => {
      const lesson = entries.get(id);
      if (lesson === undefined) {
        throw new Error(`content/course.yaml lists "${id}", but there is no content/lessons/${id}.mdx`);
      }
      return lesson;
    }),
  }));
}

/** Every lesson with what comes before and after it, across units. */
export async function readPlaces(): Promise<Place[]> {
  const places = (await readCourse()).flatMap((unit) => unit.lessons.map((lesson) => ({ unit, lesson })));
  return places.map(({ unit, lesson }, at) => {
    const [previous, next] = [places[at - 1]?.lesson, places[at + 1]?.lesson];
    return { unit, lesson, number: at + 1, ...(previous && { previous }), ...(next && { next }) };
  });
}

import { z } from 'astro/zod';
import { load } from 'js-yaml';
import { didYouMean } from '../../calculators/core/nearest.ts';
import text from '../../content/paths.yaml?raw';
import { readCourse, type Lesson } from './course.ts';

const shape = z.array(
  z.strictObject({
    id: z.string(),
    title: z.string(),
    who: z.string(),
    why: z.string(),
    lessons: z.array(z.string()).min(1),
  }),
);

export interface Path {
  readonly id: string;
  readonly title: string;
  readonly who: string;
  readonly why: string;
  readonly lessons: readonly Lesson[];
}

/** The ways through the course. Stops the build with a sentence where one names what there is not. */
export async function readPaths(): Promise<Path[]> {
  const units = await readCourse();
  const lessons = new Map(units.flatMap((unit) => unit.lessons).map((lesson) => [lesson.id, lesson]));
  const named = (name: string, path: string): readonly Lesson[] => {
    const unit = units.find(({ id }) => id === name);
    const lesson = lessons.get(name);
    if (unit) return unit.lessons;
    if (lesson) return [lesson];
    const near = didYouMean(name, [...lessons.keys(), ...units.map(({ id }) => id)]);
    throw new Error(`content/paths.yaml: "${path}" has "${name}", which is no unit and no lesson${near}`);
  };
  return shape
    .parse(load(text))
    .map((path) => ({ ...path, lessons: path.lessons.flatMap((name) => named(name, path.id)) }));
}

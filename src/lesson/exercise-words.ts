import type { CollectionEntry } from 'astro:content';

export const kindWords: Readonly<Record<CollectionEntry<'exercises'>['data']['kind'], string>> = {
  number: 'Work it out',
  steps: 'Work it out, step by step',
  choice: 'Choose',
  order: 'Put in order',
  diagnose: 'Find the cause',
  design: 'Change the plan until it holds',
  text: 'Say it in your own words',
};

export const difficultyWords = { 1: 'one step', 2: 'some thought', 3: 'hard' } as const;

import { getCollection, type CollectionEntry, type CollectionKey } from 'astro:content';

const kept = new Map<CollectionKey, Promise<unknown>>();

/**
 * All entries of a collection, asked for once a build: each asking copies every entry, and a lesson asks at
 * every term and exercise. While writing they are asked for anew, so that a change is seen.
 */
export function whole<Name extends CollectionKey>(name: Name): Promise<CollectionEntry<Name>[]> {
  if (import.meta.env.DEV) return getCollection(name);
  if (!kept.has(name)) kept.set(name, getCollection(name));
  return kept.get(name) as Promise<CollectionEntry<Name>[]>;
}

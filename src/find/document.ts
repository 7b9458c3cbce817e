/** What a search can lead to. */
export const kinds = [
  'formula',
  'model',
  'lesson',
  'material',
  'term',
  'defect',
  'exercise',
  'page',
] as const;

export type Kind = (typeof kinds)[number];

/** One page, or one part of a page, as the search knows it. */
export interface Document {
  readonly kind: Kind;
  readonly title: string;
  /** Below the base of the site, with the part after `#` when it is a part of a page. */
  readonly path: string;
  /** One sentence, shown under the title. */
  readonly says: string;
  /** Other names of the same thing. */
  readonly also: readonly string[];
  /** What the page defines or finds: its symbols come first when one is typed. */
  readonly defines: readonly string[];
  /** Symbols and units that merely occur. */
  readonly signs: readonly string[];
  /** Names of quantities and parts, weighed between the sentence and the body. */
  readonly names: readonly string[];
  readonly text: string;
  /** How many lessons, terms and defects point to it: what is used more is meant more often. */
  readonly pointed: number;
}

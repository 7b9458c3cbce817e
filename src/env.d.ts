import 'astro';

declare module 'astro' {
  interface AstroClientDirectives {
    /** Wakes when the reader reaches for the island: `src/islands/reach.ts`. */
    'client:reach'?: boolean;
  }
}

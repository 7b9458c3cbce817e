import 'astro';

declare module 'astro' {
  interface AstroClientDirectives {
    /** Wakes when the reader reaches for the island, or sees it: `src/islands/reach.ts`. */
    'client:reach'?: boolean | 'visible';
    /** Wakes once the page has been painted: `src/islands/painted.ts`. */
    'client:painted'?: boolean;
  }
}

import { fileURLToPath } from 'node:url';
import { unified } from '@astrojs/markdown-remark';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig, fontProviders } from 'astro/config';
import { offline } from './src/offline/integration.ts';
import { kernelPlugin } from './src/workers/kernel/plugin.ts';

/** KaTeX lists each font three times; every browser that runs this site reads woff2. */
const woff2Only = {
  name: 'woff2-only',
  enforce: 'pre',
  transform(code, id) {
    if (!/katex[^/]*\.css/.test(id)) return undefined;
    return code.replace(/,\s*url\([^)]*\.(?:woff|ttf)\)\s*format\([^)]*\)/g, '');
  },
};

/**
 * What is fetched at a press shares nearly all it needs with its page: the names of all that, so that they are fetched
 * together, weigh more on every page than they save. Only its styles are still fetched beside it.
 */
const fewNames = {
  name: 'few-names',
  configEnvironment() {
    const resolveDependencies = (_file, needed) => needed.filter((name) => name.endsWith('.css'));
    return { build: { modulePreload: { polyfill: false, resolveDependencies } } };
  },
};

/** Islands start through a door of ours, which keeps numbers with their units in what they write. */
const door = {
  name: 'together',
  enforce: 'pre',
  resolveId(name, importer) {
    if (name !== '@astrojs/preact/client.js' || importer?.includes('/src/together/')) return undefined;
    return fileURLToPath(new URL('src/together/client.ts', import.meta.url));
  },
};

/**
 * `client:reach`: an island that costs no script until the reader reaches for it; `client:painted`: one that leaves the
 * line to the page until that stands.
 */
const whenToWake = {
  name: 'when-to-wake',
  hooks: {
    'astro:config:setup': ({ addClientDirective }) => {
      for (const name of ['reach', 'painted'])
        addClientDirective({ name, entrypoint: `./src/islands/${name}.ts` });
    },
  },
};

const latin =
  'node_modules/@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin';

export default defineConfig({
  output: 'static',
  srcDir: 'src',
  publicDir: 'src/public',
  base: process.env.SITE_BASE ?? '/',
  trailingSlash: 'always',
  integrations: [mdx({ processor: unified() }), preact(), whenToWake, offline()],
  markdown: { syntaxHighlight: false },
  prefetch: false,
  // The default drops the space between a value and its unit when they stand on two lines.
  compressHTML: true,
  devToolbar: { enabled: false },
  fonts: [
    {
      provider: fontProviders.local(),
      name: 'Atkinson Hyperlegible Next',
      cssVariable: '--font-text',
      // Faces of other typefaces, made as wide and as high as this one, stand until it is there: nothing jumps.
      fallbacks: ['as-liberation', 'as-dejavu', 'system-ui'],
      options: {
        variants: [
          { weight: '200 800', style: 'normal', src: [`./${latin}-wght-normal.woff2`] },
          { weight: '200 800', style: 'italic', src: [`./${latin}-wght-italic.woff2`] },
        ],
      },
    },
  ],
  security: {
    csp: {
      directives: [
        "default-src 'none'",
        "base-uri 'self'",
        "connect-src 'self'",
        "font-src 'self'",
        "form-action 'self'",
        "img-src 'self' data: blob:",
        "manifest-src 'self'",
        "worker-src 'self'",
      ],
      // Typeset maths places its parts with style attributes; style elements and sheets stay hashed.
      styleDirective: { resources: ["'self'", { resource: "'unsafe-inline'", kind: 'attribute' }] },
    },
  },
  vite: {
    build: {
      // A small sheet in the page saves the wait for one more answer; a font inlined as a data: address would be
      // blocked by the policy above.
      assetsInlineLimit: (file, content) => file.endsWith('.css') && content.length < 2048,
    },
    plugins: [woff2Only, fewNames, door, kernelPlugin()],
    // As modules, so that a worker too can fetch a part of itself when it is needed.
    worker: { format: 'es', plugins: () => [kernelPlugin()] },
  },
});

import type { Plugin } from 'vite';
import { compileKernel } from './compile.ts';

/**
 * `import bytes from './assembly/stage.ts?wasm'` gives the compiled kernel as bytes. They are so few that they
 * travel inside the worker's script: nothing more to fetch, and nothing to miss when offline.
 */
export function kernelPlugin(): Plugin {
  let compiled: Promise<Uint8Array> | undefined;
  return {
    name: 'kernel',
    enforce: 'pre',
    async load(id) {
      if (!id.endsWith('/kernel/assembly/stage.ts?wasm')) return undefined;
      compiled ??= compileKernel();
      const text = Buffer.from(await compiled).toString('base64');
      return `export default Uint8Array.from(atob('${text}'), (letter) => letter.charCodeAt(0));`;
    },
  };
}

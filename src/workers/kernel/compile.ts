import { main } from 'assemblyscript/asc';
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';

const source = fileURLToPath(new URL('./assembly/stage.ts', import.meta.url));

/** Compiles the kernel. Throws with what the compiler said. */
export async function compileKernel(): Promise<Uint8Array> {
  const text = await readFile(source, 'utf8');
  let bytes: Uint8Array | undefined;
  const { error, stderr } = await main(
    [
      'stage.ts',
      '--outFile',
      'stage.wasm',
      '-O3',
      '--noAssert',
      '--enable',
      'simd',
      '--runtime',
      'stub',
      '--importMemory',
      '--noExportMemory',
      '--use',
      'abort=',
    ],
    {
      readFile: (name) => (name === 'stage.ts' ? text : null),
      writeFile: (name, contents) => {
        if (name === 'stage.wasm') bytes = contents as Uint8Array;
      },
      listFiles: () => [],
    },
  );
  if (error !== null || bytes === undefined)
    throw new Error(`the kernel does not compile: ${error?.message ?? ''}\n${stderr.toString()}`);
  return bytes;
}

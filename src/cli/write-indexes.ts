/** `npm run index`: writes the index of every kind of file of which there are many, and the plan’s equations as code. */
import { writeFileSync } from 'node:fs';
import { indexes, indexText } from './indexes.ts';

const short = (file: string): string => file.replace(`${process.cwd()}/`, '');

for (const index of indexes) {
  const text = indexText(index);
  writeFileSync(index.file, text.content);
  console.log(`${short(index.file)}: ${text.count}`);
}

// Read only now: the equations are those of the index just written.
const { writtenOutFile, writtenOutText } = await import('./written-out.ts');
const equations = writtenOutText();
writeFileSync(writtenOutFile, equations.content);
console.log(`${short(writtenOutFile)}: ${equations.count}`);

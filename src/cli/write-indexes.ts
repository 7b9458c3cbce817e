/** `npm run index`: writes the index of every kind of file of which there are many. */
import { writeFileSync } from 'node:fs';
import { indexes, indexText } from './indexes.ts';

for (const index of indexes) {
  const text = indexText(index);
  writeFileSync(index.file, text.content);
  console.log(`${index.file.replace(`${process.cwd()}/`, '')}: ${text.count}`);
}

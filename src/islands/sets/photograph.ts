import { base64 } from '../../../calculators/exercises/sets/bytes.ts';
import type { Given } from '../../../calculators/exercises/sets/hand-in.ts';

const longestSide = 1400;
const mostBytes = 350_000;
const largestFile = 30_000_000;

/** A photograph made small enough to hand in, without what a camera notes in it; a sentence where it cannot be. */
export async function photographFrom(file: File): Promise<Exclude<Given['photo'], undefined> | string> {
  if (file.size > largestFile) return 'That file is far too large for a photograph of your working.';
  let image: ImageBitmap;
  try {
    image = await createImageBitmap(file);
  } catch {
    return 'That file is not a photograph this browser can read. Take a JPEG or PNG.';
  }
  for (let side = longestSide; side >= 500; side *= 0.75) {
    const scale = Math.min(1, side / Math.max(image.width, image.height));
    const canvas = document.createElement('canvas');
    canvas.width = Math.max(1, Math.round(image.width * scale));
    canvas.height = Math.max(1, Math.round(image.height * scale));
    canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
    const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/jpeg', 0.7));
    if (blob && blob.size <= mostBytes)
      return { type: 'image/jpeg', bytes: base64(new Uint8Array(await blob.arrayBuffer())) };
  }
  return 'The photograph could not be made small enough. Take it again, closer and plainer.';
}

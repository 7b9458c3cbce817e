/** Longest side of a kept photo, in pixels: a fault of half a millimetre on a part of the hand’s size shows. */
const longest = 900;

/** A photo made small enough to keep, as the `data:` address of a JPEG. Rejects when the file is no picture. */
export async function smallPhoto(file: File): Promise<string> {
  const bitmap = await createImageBitmap(file);
  const scale = Math.min(1, longest / Math.max(bitmap.width, bitmap.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(bitmap.width * scale));
  canvas.height = Math.max(1, Math.round(bitmap.height * scale));
  canvas.getContext('2d')?.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  bitmap.close();
  return canvas.toDataURL('image/jpeg', 0.8);
}

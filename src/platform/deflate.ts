/** Raw deflate, the same in a browser and in Node. */
export async function deflate(bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array<ArrayBuffer>> {
  return drain(bytes, new CompressionStream('deflate-raw'), Infinity);
}

/** The bytes back. Rejects as soon as more than `most` have come out, so a small file cannot fill the memory. */
export async function inflate(
  bytes: Uint8Array<ArrayBuffer>,
  most: number,
): Promise<Uint8Array<ArrayBuffer>> {
  return drain(bytes, new DecompressionStream('deflate-raw'), most);
}

async function drain(
  bytes: Uint8Array<ArrayBuffer>,
  stream: CompressionStream | DecompressionStream,
  most: number,
): Promise<Uint8Array<ArrayBuffer>> {
  const writer = stream.writable.getWriter();
  // A fault shows on the reading side; without this it would also be an unhandled rejection here.
  const written = writer.write(bytes).then(() => writer.close());
  written.catch(() => undefined);
  const reader = (stream.readable as ReadableStream<Uint8Array>).getReader();
  const chunks: Uint8Array[] = [];
  let length = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    length += value.length;
    if (length > most) {
      await reader.cancel().catch(() => undefined);
      writer.abort().catch(() => undefined);
      throw new RangeError('more came out than allowed');
    }
    chunks.push(value);
  }
  await written;
  const whole = new Uint8Array(length);
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
}

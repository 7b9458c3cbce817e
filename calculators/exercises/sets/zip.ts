import { utf8 } from './bytes.ts';

const table = Uint32Array.from({ length: 256 }, (_, n) => {
  let c = n;
  for (let k = 0; k < 8; k += 1) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1;
  return c;
});

/** The check of the ZIP format: CRC-32 with the polynomial 0xEDB88320. */
export function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) crc = table[(crc ^ byte) & 255]! ^ (crc >>> 8);
  return (crc ^ 0xffffffff) >>> 0;
}

/** A ZIP archive of texts, stored as they are (PKWARE APPNOTE 6.3.3). No clock: every file is of 1 January 1980. */
export function zip(files: Readonly<Record<string, string>>): Uint8Array<ArrayBuffer> {
  const parts: Uint8Array[] = [];
  const index: Uint8Array[] = [];
  let offset = 0;
  for (const [name, text] of Object.entries(files)) {
    const path = utf8(name);
    const data = utf8(text);
    const common = [
      ...short(20), // version needed
      ...short(0x0800), // names are UTF-8
      ...short(0), // stored
      ...short(0), // midnight
      ...short(0x21), // 1 January 1980
      ...long(crc32(data)),
      ...long(data.length),
      ...long(data.length),
      ...short(path.length),
      ...short(0), // no extra field
    ];
    const local = Uint8Array.from([...long(0x04034b50), ...common]);
    index.push(
      Uint8Array.from([
        ...long(0x02014b50),
        ...short(20),
        ...common,
        ...short(0), // comment
        ...short(0), // disk
        ...short(0),
        ...long(0),
        ...long(offset),
        ...path,
      ]),
    );
    parts.push(local, path, data);
    offset += local.length + path.length + data.length;
  }
  const size = index.reduce((sum, { length }) => sum + length, 0);
  const count = index.length;
  const end = [
    ...long(0x06054b50),
    ...short(0),
    ...short(0),
    ...short(count),
    ...short(count),
    ...long(size),
    ...long(offset),
    ...short(0),
  ];
  const all = [...parts, ...index, Uint8Array.from(end)];
  const whole = new Uint8Array(all.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of all) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

const short = (n: number): number[] => [n & 255, (n >>> 8) & 255];
const long = (n: number): number[] => [...short(n), ...short(n >>> 16)];

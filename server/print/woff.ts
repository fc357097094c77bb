import { inflateSync } from 'node:zlib';

const WOFF = 0x774f4646;
const WOFF_HEAD = 44;
const WOFF_ENTRY = 20;
const SFNT_HEAD = 12;
const SFNT_ENTRY = 16;

/**
 * A WOFF 1.0 file as the plain font that it wraps (W3C Recommendation "WOFF File Format 1.0", sections 3
 * to 5). Done once, so that the font's tables need not be unpacked again for every document.
 */
export function unwrapped(woff: Uint8Array): Uint8Array {
  const source = Buffer.from(woff.buffer, woff.byteOffset, woff.byteLength);
  if (source.readUInt32BE(0) !== WOFF) throw new RangeError('not a WOFF file');
  const count = source.readUInt16BE(12);
  const tables = Array.from({ length: count }, (_, i) => tableAt(source, WOFF_HEAD + i * WOFF_ENTRY));
  const head = Buffer.alloc(SFNT_HEAD + count * SFNT_ENTRY);
  const range = 2 ** Math.floor(Math.log2(count)) * SFNT_ENTRY;
  head.writeUInt32BE(source.readUInt32BE(4), 0);
  head.writeUInt16BE(count, 4);
  head.writeUInt16BE(range, 6);
  head.writeUInt16BE(Math.floor(Math.log2(count)), 8);
  head.writeUInt16BE(count * SFNT_ENTRY - range, 10);
  const parts: Buffer[] = [head];
  let offset = head.length;
  tables.forEach(({ tag, checksum, data }, i) => {
    const entry = SFNT_HEAD + i * SFNT_ENTRY;
    head.writeUInt32BE(tag, entry);
    head.writeUInt32BE(checksum, entry + 4);
    head.writeUInt32BE(offset, entry + 8);
    head.writeUInt32BE(data.length, entry + 12);
    const padded = Buffer.alloc(Math.ceil(data.length / 4) * 4);
    data.copy(padded);
    parts.push(padded);
    offset += padded.length;
  });
  return Buffer.concat(parts);
}

function tableAt(source: Buffer, entry: number) {
  const [tag, offset, packed, length, checksum] = [0, 4, 8, 12, 16].map((at) =>
    source.readUInt32BE(entry + at),
  ) as [number, number, number, number, number];
  const bytes = source.subarray(offset, offset + packed);
  return { tag, checksum, data: packed < length ? inflateSync(bytes) : bytes };
}

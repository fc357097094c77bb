import { existsSync, readFileSync } from 'node:fs';

/**
 * The log of writes beside a SQLite file, which is only there after a server that did not end by itself.
 * Each of its frames has a sum that goes on from the one before, and SQLite takes what follows the first
 * wrong one as never written: a single turned bit would silently take everything behind it along. Here
 * such damage is found and mended. Form: SQLite file format, section 4, "The Write-Ahead Log".
 */

const HEADER_BYTES = 32;
const FRAME_HEADER_BYTES = 24;
/** Of every file that this server makes. */
const PAGE_BYTES = 4096;
const FRAME_BYTES = FRAME_HEADER_BYTES + PAGE_BYTES;
/** The lowest bit says in which order the sums read bytes: set where the high one is first. */
const MAGIC = 0x37_7f_06_82;
const VERSION = 3_007_000;
/** Two numbers that are others each time the file is written anew from its beginning. */
const SALTS_AT = 16;
const SALT_BYTES = 8;
/** Of a header what is summed, and where the sum stands: the file's and a frame's. */
const SUMMED_OF_HEADER = 24;
const SUMMED_OF_FRAME = 8;
const FRAME_SALTS_AT = 8;
const FRAME_SUM_AT = 16;
/** It says where the tables begin. */
const FIRST_PAGE = 1;
/** In so many frames a turned bit is looked for, which takes about half a second in each. */
const MOST_TURNED = 20;
/** More pages than any file of this server will have. */
const MOST_PAGES = 2 ** 24;

type Sum = readonly [number, number];

/** Goes on with a sum over more bytes, eight at a time. */
function summedOn([first, second]: Sum, bytes: Buffer, highFirst: boolean): Sum {
  let [a, b] = [first, second];
  for (let at = 0; at < bytes.length; at += 8) {
    const x = highFirst ? bytes.readUInt32BE(at) : bytes.readUInt32LE(at);
    const y = highFirst ? bytes.readUInt32BE(at + 4) : bytes.readUInt32LE(at + 4);
    a = (a + x + b) >>> 0;
    b = (b + y + a) >>> 0;
  }
  return [a, b];
}

const sumAt = (bytes: Buffer, at: number): Sum => [bytes.readUInt32BE(at), bytes.readUInt32BE(at + 4)];
const isSame = (a: Sum, b: Sum) => a[0] === b[0] && a[1] === b[1];

function putSum(bytes: Buffer, at: number, [first, second]: Sum): void {
  bytes.writeUInt32BE(first, at);
  bytes.writeUInt32BE(second, at + 4);
}

const isHighFirst = (header: Buffer) => (header.readUInt32BE(0) & 1) === 1;

function headerIsWhole(header: Buffer): boolean {
  const known = (header.readUInt32BE(0) & ~1) === MAGIC && header.readUInt32BE(8) === PAGE_BYTES;
  const sum = summedOn([0, 0], header.subarray(0, SUMMED_OF_HEADER), isHighFirst(header));
  return known && isSame(sum, sumAt(header, SUMMED_OF_HEADER));
}

const sumOfFrame = (before: Sum, frame: Buffer, highFirst: boolean): Sum =>
  summedOn(
    summedOn(before, frame.subarray(0, SUMMED_OF_FRAME), highFirst),
    frame.subarray(FRAME_HEADER_BYTES),
    highFirst,
  );

/** The last frame of what was written as one: it says how many pages the whole file then has. */
const isLastOfCommit = (frame: Buffer) => frame.readUInt32BE(4) > 0;
const saltsOf = (frame: Buffer) => frame.subarray(FRAME_SALTS_AT, FRAME_SALTS_AT + SALT_BYTES);

function framesIn(bytes: Buffer): Buffer[] {
  const count = Math.max(0, Math.floor((bytes.length - HEADER_BYTES) / FRAME_BYTES));
  return Array.from({ length: count }, (_, i) =>
    bytes.subarray(HEADER_BYTES + i * FRAME_BYTES, HEADER_BYTES + (i + 1) * FRAME_BYTES),
  );
}

/** The sum that the frame before one states, whether that is right or not. */
const sumBefore = (header: Buffer, frames: readonly Buffer[], i: number): Sum =>
  i === 0 ? sumAt(header, SUMMED_OF_HEADER) : sumAt(frames[i - 1]!, FRAME_SUM_AT);

const hasSum = (frame: Buffer, before: Sum, highFirst: boolean): boolean =>
  isSame(sumOfFrame(before, frame, highFirst), sumAt(frame, FRAME_SUM_AT));

/** Which frames follow rightly on the sum before them. */
const following = (header: Buffer, frames: readonly Buffer[], salts: Buffer): boolean[] =>
  frames.map(
    (frame, i) =>
      saltsOf(frame).equals(salts) && hasSum(frame, sumBefore(header, frames, i), isHighFirst(header)),
  );

/** What of a frame is summed, as the places of its bytes. */
const SUMMED_BYTES = [...Array(FRAME_BYTES).keys()].filter(
  (at) => at < SUMMED_OF_FRAME || at >= FRAME_HEADER_BYTES,
);

/** A frame with the one bit turned back that is wrong in it; the frame itself where it is another damage. */
function turnedBack(frame: Buffer, before: Sum, highFirst: boolean): Buffer {
  if (hasSum(frame, before, highFirst)) return frame;
  const tried = Buffer.from(frame);
  for (const at of SUMMED_BYTES) {
    const was = tried.readUInt8(at);
    for (let bit = 0; bit < 8; bit++) {
      tried.writeUInt8(was ^ (1 << bit), at);
      if (hasSum(tried, before, highFirst)) return tried;
    }
    tried.writeUInt8(was, at);
  }
  return frame;
}

/** The file's own header, or what it must have been: its frames say the rest of it. */
function soundHeader(bytes: Buffer, frames: readonly Buffer[]): Buffer {
  const header = Buffer.from(bytes.subarray(0, HEADER_BYTES));
  if (headerIsWhole(header)) return header;
  header.writeUInt32BE(VERSION, 4);
  header.writeUInt32BE(PAGE_BYTES, 8);
  // The first frame is never one of older writes; where its salts are damaged too, the next may be as new.
  for (const salts of frames.slice(0, 2).map(saltsOf)) {
    for (const magic of [MAGIC, MAGIC + 1]) {
      header.writeUInt32BE(magic, 0);
      salts.copy(header, SALTS_AT);
      putSum(header, SUMMED_OF_HEADER, summedOn([0, 0], header.subarray(0, SUMMED_OF_HEADER), magic > MAGIC));
      if (following(header, frames, salts).some(Boolean)) return header;
    }
  }
  return header;
}

/**
 * What the log of writes at `path` must have been where a part of it is damaged; undefined where it is
 * whole or not there. A single turned bit is turned back. A frame with more damage stays in, because most of
 * its page is as it was: whoever reads the rows sums each of them; but not a first page, without which nothing
 * can be read: an earlier one says the same of the tables. What is cut off at the end, or damaged in its last frame, can't be told
 * from what a killed server has not written to its end. Such leavings end without a commit, also where
 * later writes stand over their beginning.
 */
export function mendedWrites(path: string): Buffer | undefined {
  const bytes = existsSync(path) ? readFileSync(path) : Buffer.alloc(0);
  const frames = framesIn(bytes);
  if (frames.length === 0) return undefined;
  const header = soundHeader(bytes, frames);
  const right = following(header, frames, header.subarray(SALTS_AT, SALTS_AT + SALT_BYTES));
  const last = frames.findLastIndex((frame, i) => right[i] && isLastOfCommit(frame));
  const isWhole = header.equals(bytes.subarray(0, HEADER_BYTES)) && !right.slice(0, last + 1).includes(false);
  if (last < 0 || isWhole) return undefined;
  let tries = MOST_TURNED;
  const usable = frames.slice(0, last + 1).flatMap((frame, i) => {
    if (right[i]) return [frame];
    const before = sumBefore(header, frames, i);
    const again = tries-- > 0 ? turnedBack(frame, before, isHighFirst(header)) : frame;
    const isLost = again.readUInt32BE(0) === FIRST_PAGE && !hasSum(again, before, isHighFirst(header));
    return isLost ? [] : [again];
  });
  return sealed(header, usable);
}

/** These frames with salts and sums that SQLite takes. */
function sealed(header: Buffer, frames: readonly Buffer[]): Buffer {
  let sum = sumAt(header, SUMMED_OF_HEADER);
  const kept = frames.filter((frame) => {
    const page = frame.readUInt32BE(0);
    return page > 0 && page < MOST_PAGES;
  });
  const parts = kept.map((frame) => {
    const copy = Buffer.from(frame);
    header.copy(copy, FRAME_SALTS_AT, SALTS_AT, SALTS_AT + SALT_BYTES);
    sum = sumOfFrame(sum, copy, isHighFirst(header));
    putSum(copy, FRAME_SUM_AT, sum);
    return copy;
  });
  return Buffer.concat([header, ...parts]);
}

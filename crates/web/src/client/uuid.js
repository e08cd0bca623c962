// Version 7 UUIDs (RFC 9562): 48 bits of Unix milliseconds, 12 bits that count within a millisecond, 62 random bits.
// Works where crypto.randomUUID does not, as on a page over plain HTTP.

let lastMs = 0;
let counter = 0;

/**
 * A new id, larger than every one this page made before.
 * @param {number} [now]
 * @param {(bytes: Uint8Array<ArrayBuffer>) => Uint8Array} [fill]
 */
export function uuid7(now = Date.now(), fill = (bytes) => crypto.getRandomValues(bytes)) {
  const random = fill(new Uint8Array(10));
  if (now > lastMs) {
    lastMs = now;
    counter = ((random[8] << 8) | random[9]) & 0x7ff; // the upper half is room to count
  } else if (++counter > 0xfff) {
    lastMs += 1;
    counter = 0;
  }
  const bytes = new Uint8Array(16);
  for (let i = 0; i < 6; i++) bytes[i] = Math.floor(lastMs / 2 ** (8 * (5 - i))) & 0xff;
  bytes[6] = 0x70 | (counter >> 8);
  bytes[7] = counter & 0xff;
  bytes.set(random.subarray(0, 8), 8);
  bytes[8] = 0x80 | (bytes[8] & 0x3f);
  return dashed(bytes);
}

/**
 * The id of a press that was heard: version 8, the time first so that ids sort by it, the rest from the stream, the onset
 * (seconds into it) and the word, so that hearing it again makes the same.
 * @param {string} stream
 * @param {number} onset
 * @param {string} word
 * @param {number} at
 */
export async function heardId(stream, onset, word, at) {
  const said = new TextEncoder().encode(`sayso heard here 1 ${stream} ${onset.toFixed(3)} ${word}`);
  const bytes = new Uint8Array(await crypto.subtle.digest("SHA-256", said)).slice(0, 16);
  for (let i = 0; i < 6; i++) bytes[i] = Math.floor(at / 2 ** (8 * (5 - i))) & 0xff;
  bytes[6] = 0x80 | (bytes[6] & 0x0f);
  bytes[8] = 0x80 | (bytes[8] & 0x3f);
  return dashed(bytes);
}

/** @param {Uint8Array} bytes */
export const hex = (bytes) => [...bytes].map((b) => b.toString(16).padStart(2, "0")).join("");

/** @param {Uint8Array} bytes */
function dashed(bytes) {
  const all = hex(bytes);
  return [all.slice(0, 8), all.slice(8, 12), all.slice(12, 16), all.slice(16, 20), all.slice(20)].join("-");
}

// A tar archive (POSIX.1-1988, ustar) of files held in memory.

const BLOCK = 512;

/**
 * @param {string} name at most 100 letters of ASCII
 * @param {number} size
 * @param {number} seconds since 1970
 */
function header(name, size, seconds) {
  const block = new Uint8Array(BLOCK);
  /**
   * @param {number} at
   * @param {string} chars
   */
  const put = (at, chars) => block.set(new TextEncoder().encode(chars), at);
  /**
   * @param {number} value
   * @param {number} digits
   */
  const octal = (value, digits) => `${value.toString(8).padStart(digits, "0")}\0`;
  put(0, name);
  put(100, octal(0o644, 7));
  put(108, octal(0, 7));
  put(116, octal(0, 7));
  put(124, octal(size, 11));
  put(136, octal(seconds, 11));
  put(148, "        ");
  put(156, "0");
  put(257, "ustar\0" + "00");
  const sum = block.reduce((a, b) => a + b, 0);
  put(148, `${sum.toString(8).padStart(6, "0")}\0 `);
  return block;
}

/**
 * The archive in parts, for a Blob.
 * @param {{ name: string, bytes: Uint8Array<ArrayBuffer> }[]} files
 * @param {Date} at
 */
export function tar(files, at) {
  const seconds = Math.floor(at.getTime() / 1000);
  const parts = files.flatMap(({ name, bytes }) => [
    header(name, bytes.length, seconds),
    bytes,
    new Uint8Array((BLOCK - (bytes.length % BLOCK)) % BLOCK),
  ]);
  return [...parts, new Uint8Array(2 * BLOCK)];
}

// Draws that follow from ids alone, the same as the notebook's own: what they are and where they come from stands in
// crates/model/src/draw.rs; tests/reference/draws.json is read on both sides. Pure.

/** Days for which two words stay partners. */
export const PARTNER_DAYS = 4;
const DAY_MS = 86_400_000;
const GOLDEN = 0x9e3779b97f4a7c15n;

/** @param {bigint} n */
const u64 = (n) => BigInt.asUintN(64, n);

/** @param {bigint} z */
function mix(z) {
  z = u64((z ^ (z >> 30n)) * 0xbf58476d1ce4e5b9n);
  z = u64((z ^ (z >> 27n)) * 0x94d049bb133111ebn);
  return z ^ (z >> 31n);
}

/**
 * The lower 64 bits of a UUID.
 * @param {string} id
 */
const low = (id) => BigInt(`0x${id.replaceAll("-", "").slice(16)}`);

/**
 * @param {bigint} bits
 * @param {number} n
 */
const below = (bits, n) => Number((bits * BigInt(n)) >> 64n);

/**
 * The word called for in call `number` (from 1) of a round; undefined without words.
 * @param {string} round
 * @param {number} number
 * @param {string[]} words
 */
export function called(round, number, words) {
  return words[below(mix(u64(low(round) + GOLDEN * BigInt(number))), words.length)];
}

/**
 * Whether the answer to a press brings the partner's thing.
 * @param {string} swap
 * @param {string} press
 * @param {number} oneIn
 */
export function swapped(swap, press, oneIn) {
  return below(mix(u64(low(press) + mix(low(swap)))), Math.max(1, oneIn)) === 0;
}

/**
 * Blocks of PARTNER_DAYS since a time of swaps began; undefined before it. Both in milliseconds.
 * @param {number} begun
 * @param {number} at
 */
export function block(begun, at) {
  return at < begun ? undefined : Math.floor((at - begun) / (PARTNER_DAYS * DAY_MS));
}

/**
 * The word that is the partner of `word` in a block, by the circle method; undefined for one that has none in it.
 * @param {string[]} words
 * @param {number} inBlock
 * @param {string} word
 */
export function partner(words, inBlock, word) {
  const at = words.indexOf(word);
  if (at < 0 || words.length < 2) return undefined;
  const last = words.length + (words.length % 2) - 1;
  const turn = inBlock % last;
  let other;
  if (at === last) {
    other = 0;
    while ((2 * other) % last !== turn) other += 1;
  } else {
    other = (turn + last - at) % last;
    if (other === at) other = last;
  }
  return words[other];
}

// Which sound is which word: for each sound the place of its word; undefined where words ran out, null where it is no
// button. Pure.

/** @typedef {(number | undefined | null)[]} Names */

/**
 * By the order in which they were pressed.
 * @param {number} sounds
 * @param {number} words
 * @returns {Names}
 */
export const inOrder = (sounds, words) => Array.from({ length: sounds }, (_, i) => (i < words ? i : undefined));

/**
 * Words that stand from a sound on, in order, and those behind the last of them.
 * @param {Names} names
 * @param {number} at
 * @param {number} words
 */
function following(names, at, words) {
  const standing = names.slice(at).filter((n) => typeof n === "number");
  const last = Math.max(-1, ...names.filter((n) => typeof n === "number"));
  return [...standing, ...Array.from({ length: words - last - 1 }, (_, i) => last + 1 + i)];
}

/**
 * From a sound on, each that is a button takes the next of these words.
 * @param {Names} names
 * @param {number} at
 * @param {number[]} queue
 * @returns {Names}
 */
const filled = (names, at, queue) => names.map((n, i) => (i < at || n === null ? n : queue.shift()));

/**
 * The sound is no button: the names from it on move up.
 * @param {Names} names
 * @param {number} at
 * @param {number} words
 */
export const dropped = (names, at, words) =>
  filled(
    names.map((n, i) => (i === at ? null : n)),
    at,
    following(names, at, words),
  );

/**
 * The word of this sound was not pressed: this and the following sounds take the words after it.
 * @param {Names} names
 * @param {number} at
 * @param {number} words
 */
export const skipped = (names, at, words) =>
  filled(
    names,
    at,
    following(names, at, words).filter((w) => w !== names[at]),
  );

/**
 * The sound says that word, or none; the one that had it gets this one's.
 * @param {Names} names
 * @param {number} at
 * @param {number | null} word
 * @returns {Names}
 */
export function renamed(names, at, word) {
  const had = names[at] ?? undefined;
  return names.map((name, i) => (i === at ? word : word !== null && name === word ? had : name));
}

/**
 * What is to be said of so many sounds for so many words.
 * @param {number} sounds
 * @param {number} words
 */
export const compared = (sounds, words) =>
  sounds === 0 ? "none" : sounds === words ? "match" : sounds < words ? "fewer" : "more";

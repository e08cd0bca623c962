// When each word was last heard: at once from this device's own ear, and once a minute from the notebook for what other
// devices heard. Silence of one button beside the others shows while one looks.

import { text } from "./dom.js";

const ASK_MS = 60_000;

/** @typedef {{ says: string, at: string | null, said: string }} Last */

/**
 * Puts it on a word's line, unless a later press stands there.
 * @param {Element} list
 * @param {string} says
 * @param {number} at milliseconds
 * @param {string} words
 */
export function heardAt(list, says, at, words) {
  for (const line of /** @type {Iterable<HTMLElement>} */ (list.querySelectorAll("[data-says]"))) {
    if (line.dataset.says !== says || at < Number(line.dataset.at ?? 0)) continue;
    line.dataset.at = String(at);
    text(line.querySelector("[data-last-said]"), words);
  }
}

/**
 * Asks the notebook from time to time while somebody looks.
 * @param {HTMLElement} list
 */
export function keepFresh(list) {
  const ask = async () => {
    if (document.visibilityState !== "visible" || !list.checkVisibility()) return;
    const response = await fetch(list.dataset.last ?? "", { credentials: "same-origin" });
    if (!response.ok || response.redirected) return;
    for (const { says, at, said } of /** @type {Last[]} */ (await response.json())) {
      if (at !== null) heardAt(list, says, Date.parse(at), said);
    }
  };
  // Away: the lines stay as they are, and this device's own presses still come.
  setInterval(() => ask().catch((error) => console.warn("last heard", error)), ASK_MS);
}

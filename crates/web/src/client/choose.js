// Which word it was: a sheet with all words, each at its place on the board and in letters as on its pad.

import { el, letterPx, openSheet } from "./dom.js";
import { zoneOf } from "./mat.js";

/** @import { Child, Pad, WordNow } from "../../client-checks/client" */

const PLACE_REM = 3.75; // narrower than this a place is for no word that can be read
const EDGES_REM = 2; // what the sheet leaves beside its content
const SHEET_REM = 34;

/** One part of the mat as it lies. @typedef {{ columns: number, cells: HTMLElement[] }} Part */

/**
 * The mat in parts that the sheet has room for: whole, or zone by zone, without rows that are blank.
 * @param {HTMLElement} mat
 * @returns {Part[]}
 */
function parts(mat) {
  const cells = /** @type {HTMLElement[]} */ ([...mat.querySelectorAll("[data-part=pads] > *")]);
  const columns = Number(mat.dataset.columns);
  const rem = letterPx();
  const room = Math.min(innerWidth, SHEET_REM * rem) - EDGES_REM * rem;
  if (room / columns >= PLACE_REM * rem) return [{ columns, cells: filled(cells, columns) }];
  const zones = [...new Set(cells.map((cell) => cell.dataset.z))].map((zone) => {
    const { inside, wide } = zoneOf(mat, cells, zone);
    const own = cells.filter((_, i) => inside[i]);
    return { columns: wide, cells: filled(own, wide) };
  });
  return zones.filter((zone) => zone.cells.length > 0);
}

/**
 * Rows in which a word stands.
 * @param {HTMLElement[]} cells
 * @param {number} columns
 */
const filled = (cells, columns) =>
  cells.filter((_, i) => {
    const from = i - (i % columns);
    return cells.slice(from, from + columns).some((cell) => cell.dataset.word);
  });

/**
 * @param {Pad} pad
 * @param {string} title
 * @param {(word: string) => void} chosen
 * @param {(close: () => void) => Child[]} [extra]
 */
export function chooseWord(pad, title, chosen, extra = () => []) {
  const mat = document.querySelector("[data-part=mat]");
  openSheet(title, (close) => {
    /** @type {Set<string>} */
    const laid = new Set();
    /**
     * @param {WordNow} word
     * @param {Node} face
     */
    const choice = (word, face) => {
      const choose = () => {
        close();
        chosen(word.id);
      };
      laid.add(word.id);
      return el("button", { type: "button", class: "pad", "data-test": `choose-${word.says}`, onclick: choose }, face);
    };
    /** @param {HTMLElement} cell */
    const place = (cell) => {
      const word = pad.now.words.find((w) => w.id === cell.dataset.word);
      if (!word) return el("span", { class: "blank" });
      const face = /** @type {HTMLElement} */ (cell.querySelector(".face")?.cloneNode(true));
      for (const now of face.querySelectorAll(".count, .does, .gives")) now.textContent = "";
      return choice(word, face);
    };
    const grids = (mat instanceof HTMLElement ? parts(mat) : []).map(({ columns, cells }) =>
      el("div", { class: `pads small cols-${columns}` }, ...cells.map(place)),
    );
    // A word that came while the page was open has no place here yet.
    const loose = pad.now.words
      .filter((w) => !laid.has(w.id))
      .map((w) => choice(w, el("span", { class: "face" }, el("span", { class: "says" }, w.says))));
    return [...extra(close), ...grids, loose.length > 0 && el("div", { class: "pads small cols-3" }, ...loose)];
  });
}

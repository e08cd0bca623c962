// Making and changing elements without markup in strings.

import { say } from "./say.js";

/** @import { Child } from "../../client-checks/client" */

/**
 * An element with properties, attributes (names with a dash, `role`, `class`) and children.
 * @template {keyof HTMLElementTagNameMap} T
 * @param {T} tag
 * @param {Record<string, any>} [props]
 * @param {...Child} children
 * @returns {HTMLElementTagNameMap[T]}
 */
export function el(tag, props = {}, ...children) {
  /** @type {any} */
  const node = document.createElement(tag);
  for (const [name, value] of Object.entries(props)) {
    if (value === undefined || value === false) continue;
    if (name.startsWith("on")) node.addEventListener(name.slice(2), value);
    else if (name in node && !name.includes("-")) node[name] = value;
    else node.setAttribute(name, value === true ? "" : value);
  }
  node.append(...children.filter((c) => c !== undefined && c !== null && c !== false && c !== ""));
  return node;
}

/**
 * The element of the page, or of a part of it, that must be there.
 * @param {string} selector
 * @param {ParentNode} [root]
 * @returns {any}
 */
export function find(selector, root = document) {
  const found = root.querySelector(selector);
  if (!found) throw new Error(`the page has no ${selector}`);
  return found;
}

/**
 * A button with a stable name for tests.
 * @param {string} text
 * @param {string} test
 * @param {(event: MouseEvent) => unknown} onclick
 * @param {Record<string, any>} [props]
 */
export const button = (text, test, onclick, props = {}) =>
  el("button", { type: "button", "data-test": test, onclick, ...props }, text);

/**
 * Sets text only where it differs, so that screen readers are not told the same again.
 * @param {Element | null} node
 * @param {string} value
 */
export function text(node, value) {
  if (node && node.textContent !== value) node.textContent = value;
}

/** Where a button of that use lies under the thumb: row by row, four a row. */
const PLACES = ["give", "took", "ignored", "away", "show", "no", "other", "more"];

/**
 * Buttons at places that never change; a place without one stays empty.
 * @param {Partial<Record<"give" | "took" | "ignored" | "away" | "show" | "no" | "other" | "more", Node | false>>} at
 */
export const slots = (at) =>
  el(
    "div",
    { class: "slots" },
    ...PLACES.map((place) => /** @type {Record<string, Node | false>} */ (at)[place] || el("span", { class: "blank" })),
  );

/**
 * What is asked or said, in the room kept for it.
 * @param {...Child} children
 */
export const tell = (...children) => el("div", { class: "tell", "data-tell": true }, ...children);

/** @type {HTMLDialogElement | undefined} */
let sheet; // the one that is open

/**
 * A sheet from the bottom with a title and things to choose from; `fill(close)` gives its content.
 * @param {string} title
 * @param {(close: () => void) => Child[]} fill
 */
export function openSheet(title, fill) {
  closeSheet();
  /** @returns {void} */
  const close = () => closeSheet(mine);
  const heading = el("h2", { id: "sheet-title" }, title);
  /** @type {HTMLDialogElement} */
  const mine = el(
    "dialog",
    { class: "sheet", "aria-labelledby": "sheet-title", "data-test": "sheet", onclose: close },
    heading,
    el("div", { class: "stack" }, ...fill(close)),
    button(say("client-close"), "sheet-close", close, { class: "wide" }),
  );
  sheet = mine;
  document.body.append(mine);
  mine.showModal();
}

// A sheet tells of its closing only after the next one may have opened; it must close none but itself.
/** @param {HTMLDialogElement} [which] */
function closeSheet(which = sheet) {
  if (which === sheet) sheet = undefined;
  if (which?.open) which.close();
  which?.remove();
}

/** The height of a letter, as the reader chose it. */
export const letterPx = () => parseFloat(getComputedStyle(document.documentElement).fontSize);

// For who does not look at the pad, or does not point at it: what is asked is said once, and the focus is never lost.

import { text } from "./dom.js";

/**
 * What has the focus inside; undefined if nothing there has it.
 * @param {HTMLElement} root
 */
export const focused = (root) => {
  const at = /** @type {HTMLElement | null} */ (document.activeElement);
  return at && at !== root && root.contains(at) ? at : undefined;
};

/** @param {Element | null} node */
const usable = (node) =>
  node?.checkVisibility({ visibilityProperty: true }) && !node.matches(":disabled")
    ? /** @type {HTMLElement} */ (node)
    : undefined;

/**
 * Gives the focus on where what held it went away: to the same control drawn anew, to the first thing that is asked now,
 * or to the pad last tapped.
 * @param {HTMLElement} root
 * @param {HTMLElement} held
 * @param {string | undefined} word
 */
export function keepFocus(root, held, word) {
  if (usable(held) && document.activeElement === held) return;
  if (document.querySelector("dialog[open]")) return;
  /** @param {string} selector */
  const first = (selector) => [...root.querySelectorAll(selector)].map(usable).find(Boolean);
  const same = held.dataset.test && first(`[data-test="${CSS.escape(held.dataset.test)}"]`);
  const next =
    same ||
    first("[data-part=panel] button:not([aria-pressed])") ||
    first("[data-action=joined]") ||
    (word && first(`[data-part=pads] [data-word="${CSS.escape(word)}"]`)) ||
    first("[data-part=pads] [data-word]");
  next?.focus({ preventScroll: true });
}

/**
 * Says what the panel asks once it asks something else; clocks in it are left out.
 * @param {HTMLElement} said
 * @param {HTMLElement} panel
 */
export function announce(said, panel) {
  const parts = [...panel.querySelectorAll("[data-tell] > :not([aria-hidden], button)")];
  text(said, parts.map((p) => p.textContent).join(" "));
}

// Keys at a desk: 1 to 9 for the words in the order of reading, and a letter for what is noted most or what says its own.

/** Controls of a letter; the first that can be used is meant. @type {Record<string, string[]>} */
const LETTERS = {
  j: ["act-joined"],
  l: ["act-left", "invitation-left", "then-left"],
  s: ["act-sign", "swaps-sign"],
  u: ["undo-last"],
};

/** @param {Element} node */
const usable = (node) => node.checkVisibility({ visibilityProperty: true }) && !node.matches(":disabled");

/**
 * The control a key stands for; undefined for other keys.
 * @param {string} key
 * @param {ParentNode} root
 * @returns {HTMLElement | undefined}
 */
function control(key, root) {
  if (/^[1-9]$/.test(key)) {
    const shown = [...root.querySelectorAll("[data-part=pads] [data-word]")].filter((b) => b.checkVisibility());
    const pad = shown[Number(key) - 1];
    return pad && usable(pad) ? /** @type {HTMLElement} */ (pad) : undefined;
  }
  const letter = key.toLowerCase();
  const tests = (LETTERS[letter] ?? []).map((t) => `[data-test="${t}"]`);
  const selectors = [...tests, `[data-letter="${CSS.escape(letter)}"]`];
  const found = selectors.map((s) => root.querySelector(s)).find((b) => b && usable(b));
  return /** @type {HTMLElement | undefined} */ (found ?? undefined);
}

/**
 * Lets keys stand for taps, except while something is typed or a sheet asks, or where they were turned off.
 * @param {HTMLElement} root
 * @param {() => boolean} [count] whether they count
 */
export function listenForKeys(root, count = () => true) {
  document.addEventListener("keydown", (event) => {
    if (!count()) return;
    if (event.ctrlKey || event.metaKey || event.altKey || event.repeat) return;
    const at = /** @type {Element} */ (event.target);
    if (at.closest("input, select, textarea, [contenteditable]") || document.querySelector("dialog[open]")) return;
    const found = control(event.key, root);
    if (!found) return;
    event.preventDefault();
    found.focus({ preventScroll: true });
    found.click();
  });
}

// The mat on a phone that all its places do not fit: zones first, one of them opened large.

import { find } from "./dom.js";

/**
 * Makes the zones work, where there are any. `changed` is called once one is opened or closed.
 * @param {HTMLElement} mat
 * @param {() => void} changed
 */
export function zones(mat, changed) {
  const buttons = /** @type {HTMLButtonElement[]} */ ([...mat.querySelectorAll("[data-zone]")]);
  if (buttons.length === 0) return;
  /** @type {HTMLElement} */
  const pads = find("[data-part=pads]", mat);
  const cells = /** @type {HTMLElement[]} */ ([...pads.querySelectorAll("[data-z]")]);
  /** @type {HTMLButtonElement} */
  const whole = find("[data-part=whole]", mat);

  /** @param {string} zone */
  const open = (zone) => {
    const { inside, wide } = zoneOf(mat, cells, zone);
    cells.forEach((cell, i) => cell.classList.toggle("elsewhere", !inside[i]));
    pads.style.setProperty("--zone-cols", String(wide));
    mat.dataset.open = zone;
    whole.hidden = false;
    changed();
    const pad = cells.find((cell, i) => inside[i] && cell.matches("button"));
    pad?.focus({ preventScroll: true });
  };
  const close = () => {
    const was = buttons.find((b) => b.dataset.zone === mat.dataset.open);
    delete mat.dataset.open;
    whole.hidden = true;
    changed();
    was?.focus({ preventScroll: true });
  };
  for (const b of buttons) b.addEventListener("click", () => open(b.dataset.zone ?? ""));
  whole.addEventListener("click", close);
}

/**
 * Which places are a zone's, and how many of them lie in a row.
 * @param {HTMLElement} mat
 * @param {HTMLElement[]} cells
 * @param {string | undefined} zone
 */
export function zoneOf(mat, cells, zone) {
  const columns = Number(mat.dataset.columns);
  const inside = cells.map((cell) => cell.dataset.z === zone);
  return { inside, wide: Math.min(Number(mat.dataset.zoneWidth), columns - (inside.indexOf(true) % columns)) };
}

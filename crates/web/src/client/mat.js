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
  const columns = Number(mat.dataset.columns);
  const width = Number(mat.dataset.zoneWidth);

  /** @param {string} zone */
  const open = (zone) => {
    const inside = cells.map((cell) => cell.dataset.z === zone);
    const first = inside.indexOf(true) % columns;
    cells.forEach((cell, i) => cell.classList.toggle("elsewhere", !inside[i]));
    pads.style.setProperty("--zone-cols", String(Math.min(width, columns - first)));
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

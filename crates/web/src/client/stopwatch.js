// Times what an animal is busy with in a free-access test. Without it the seconds are typed.

import { find } from "./dom.js";
import { clock, say } from "./say.js";

/** @type {HTMLFormElement | null} */
const form = document.querySelector("form[data-stopwatch]");
if (form) {
  /** @type {HTMLElement} */
  const watch = find("[data-clock]", form);
  /** @type {HTMLDetailsElement} */
  const numbers = find("[data-numbers]", form);
  /** @type {HTMLButtonElement} */
  const begin = find("[data-begin]", form);
  const toggles = /** @type {HTMLButtonElement[]} */ ([...form.querySelectorAll("[data-toggle]")]);
  /** @type {Map<string, number>} Milliseconds by name. */
  const spent = new Map();
  /** @type {string | null} What it is busy with. */
  let running = null;
  /** @type {number | null} When the clock was started. */
  let began = null;
  let total = 0;
  let turned = 0; // when it turned to what it is busy with
  /** @param {string} name */
  const field = (name) => /** @type {HTMLInputElement} */ (form.elements.namedItem(name));
  /** @param {number} ms */
  const seconds = (ms) => (ms / 1000).toFixed(1);
  const now = () => performance.now();
  /**
   * @param {string} name
   * @param {number} ms
   */
  const show = (name, ms) => {
    field(name).value = seconds(ms);
    find(`[data-time="${CSS.escape(name)}"]`, form).textContent = clock(ms);
  };
  // The sum so far, without stopping.
  const passed = () => total + (began === null ? 0 : now() - began);
  /** @param {string} name */
  const busy = (name) => (spent.get(name) ?? 0) + (running === name ? now() - turned : 0);
  const rest = () => {
    if (running === null) return;
    const sofar = busy(running);
    spent.set(running, sofar);
    show(running, sofar);
    running = null;
  };
  const mark = () => toggles.forEach((b) => b.setAttribute("aria-pressed", String(b.dataset.toggle === running)));
  const tick = () => {
    if (began === null) return;
    show("observed_s", passed());
    if (running !== null) show(running, busy(running));
  };
  watch.hidden = false;
  // Left open where a number is to be put right.
  numbers.open = numbers.querySelector("[aria-invalid]") !== null;
  toggles.forEach((b) => {
    const name = b.dataset.toggle ?? "";
    spent.set(name, 1000 * (Number(field(name).value.replace(",", ".")) || 0));
  });
  total = 1000 * (Number(field("observed_s").value.replace(",", ".")) || 0);
  const start = () => {
    began = now();
    begin.textContent = say("client-ear-pause");
  };
  const stop = () => {
    rest();
    mark();
    total = passed();
    began = null;
    begin.textContent = say("client-ear-go-on");
    show("observed_s", total);
  };
  begin.addEventListener("click", () => (began === null ? start() : stop()));
  toggles.forEach((b) =>
    b.addEventListener("click", () => {
      const name = b.dataset.toggle ?? "",
        same = running === name;
      rest();
      if (!same) {
        if (began === null) start();
        running = name;
        turned = now();
      }
      mark();
    }),
  );
  form.addEventListener("submit", () => {
    if (began !== null) stop();
  });
  setInterval(tick, 250);
}

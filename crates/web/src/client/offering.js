// How something is offered and how long is waited then: what chooses them.

import { button, el } from "./dom.js";
import { set } from "./inviting.js";
import { say } from "./say.js";

/** @import { Pad, Way } from "../../client-checks/client" */

/** @type {[Way, "client-board-way-view" | "client-board-way-point" | "client-board-way-two"][]} */
export const KINDS = [
  ["offer_in_view", "client-board-way-view"],
  ["ask_and_point", "client-board-way-point"],
  ["ask_between_two", "client-board-way-two"],
];
const WAITS = [3, 5, 8, 10, 15, 20, 30];

/**
 * @param {Pad} pad
 * @param {Way} way
 * @param {typeof KINDS} kinds
 */
export const ways = (pad, way, kinds) =>
  el(
    "div",
    { class: kinds.length === 2 ? "row even" : "then three" },
    ...kinds.map(([k, t]) =>
      button(say(t), `way-${k}`, () => set(pad, { way: k }), { "aria-pressed": String(way === k) }),
    ),
  );

/**
 * @param {Pad} pad
 * @param {number} wait
 */
export const waits = (pad, wait) =>
  el(
    "label",
    { class: "inline" },
    `${say("client-board-wait")} `,
    el(
      "select",
      {
        "data-test": "wait",
        onchange: (/** @type {{ target: HTMLSelectElement }} */ e) => set(pad, { wait: Number(e.target.value) }),
      },
      ...WAITS.map((w) =>
        el(
          "option",
          { value: String(w), selected: w === wait },
          say(w === pad.now.wait_s ? "client-board-wait-usual" : "client-board-wait-seconds", { n: w }),
        ),
      ),
    ),
  );

// How loud it is at the microphone, to be seen while one records or listens.

import { el } from "./dom.js";
import { say } from "./say.js";

/** A meter, hidden until there is sound. */
export const meter = () =>
  el("meter", { class: "wide", min: 0, max: 1, value: 0, "aria-label": say("client-ear-loudness"), hidden: true });

/**
 * How loud a peak is for a meter, 0 to 1.
 * @param {number} peak
 */
export const loudness = (peak) => (peak > 0 ? Math.max(0, 1 + Math.log10(peak) / 3) : 0);

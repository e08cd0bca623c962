// One recording without a gap, and when presses were marked in it.

/** @import { Take } from "../../client-checks/client" */

const LOOK_BACK = 20; // blocks: being late is an accident, so the least of them is nearest to the truth
const JUMP_MS = 600; // a sound that is off its clock by this much was held up

/**
 * A recording at `rate` samples a second.
 * @param {number} rate
 * @returns {Take}
 */
export function makeTake(rate) {
  /** @type {Int16Array[]} */
  const blocks = [];
  /** @type {number[]} */
  const marks = []; // on the device's clock, milliseconds
  /** @type {number[]} */
  let offsets = []; // of the last blocks: when the sound would have begun
  let began = Infinity;
  /** @type {number | undefined} */
  let first;
  let held = 0;

  return {
    get seconds() {
      return held / rate;
    },
    get marked() {
      return marks.length;
    },
    add({ position, samples, at }) {
      first ??= position;
      blocks.push(samples);
      held += samples.length;
      const offset = at - (1000 * (position + samples.length - first)) / rate;
      offsets = [...offsets, offset].slice(-LOOK_BACK);
      // Steady first, so that a slow start is no jump.
      const jumped = blocks.length > LOOK_BACK && Math.min(...offsets) - began > JUMP_MS;
      began = Math.min(began, offset);
      return !jumped;
    },
    mark(now) {
      marks.push(now);
    },
    end(tail) {
      const at = marks.map((m) => (m - began) / 1000).filter((s) => s >= 0);
      const whole = at.filter((s) => s + tail <= held / rate);
      // A press that had no time to sound to its end is cut away with its sound.
      const cut = at[whole.length];
      const length = cut === undefined ? held : Math.max(0, Math.min(held, Math.round((cut - 1) * rate)));
      const samples = new Int16Array(held);
      let to = 0;
      for (const b of blocks) {
        samples.set(b, to);
        to += b.length;
      }
      return { samples: samples.slice(0, length), presses: whole.filter((s) => s <= length / rate) };
    },
  };
}

// The engine of the notebook as WebAssembly: one instance is one ear. Touches nothing but its own memory.

/** @import { Engine, HeardNow, Parts } from "../../client-checks/client" */

const PRESS = 6; // numbers a press

// A module of one function that does nothing but fill a vector: who takes it can run the engine.
const VECTORS = [
  ...[0, 97, 115, 109, 1, 0, 0, 0], // the format
  ...[1, 4, 1, 96, 0, 0], // one type: nothing to nothing
  ...[3, 2, 1, 0], // one function of it
  ...[10, 9, 1, 7, 0, 0x41, 0, 0xfd, 0x11, 0x1a, 0x0b], // i32.const 0, i32x4.splat, drop, end
];

/** Whether this browser can run it. */
export const runsHere = () => typeof WebAssembly === "object" && WebAssembly.validate(Uint8Array.from(VECTORS));

/**
 * A new ear.
 * @param {WebAssembly.Module} module
 * @returns {Promise<Engine>}
 */
export async function makeEngine(module) {
  const { exports } = await WebAssembly.instantiate(module, {});
  const parts = /** @type {Parts} */ (/** @type {unknown} */ (exports));

  /** @param {Float32Array} samples */
  const write = (samples) => {
    // Making room may grow the memory, and its buffer is another one then.
    const at = parts.room(samples.length);
    new Float32Array(parts.memory.buffer, at, samples.length).set(samples);
  };

  /** @param {number} length of the fault */
  const sound = (length) => {
    if (length === 0) return;
    throw new Error(new TextDecoder().decode(new Uint8Array(parts.memory.buffer, parts.fault(), length)));
  };

  /**
   * @param {number} count of numbers
   * @returns {HeardNow[]}
   */
  const heard = (count) => {
    const n = new Float64Array(parts.memory.buffer, parts.presses(), count);
    return Array.from({ length: count / PRESS }, (_, i) => {
      const [clip, onset, confidence, speed, level, share] = n.subarray(i * PRESS, (i + 1) * PRESS);
      return { clip, onset, confidence, speed, level, share };
    });
  };

  /**
   * @param {number} length of what was said, as JSON
   */
  const told = (length) => {
    sound(parts.wrong());
    return JSON.parse(new TextDecoder().decode(new Uint8Array(parts.memory.buffer, parts.said(), length)));
  };

  return {
    /**
     * Takes the next clip; `word` is the place of the first clip that says the same, by which presses name it; `speeds` the
     * slowest and the fastest to listen for.
     */
    clip(samples, rate, word, speeds) {
      write(samples);
      sound(parts.clip(rate, word));
      if (!speeds) return; // kept by an earlier version: at the usual ones
      const [low, high] = speeds;
      parts.at_speeds((low + high) / 2, (high - low) / 2);
    },
    /** What comes of a proof: in these samples the button of the word was pressed once. */
    prove(samples, rate, word) {
      write(samples);
      return told(parts.prove(rate, word));
    },
    /** The samples cut at their pauses. */
    cut(samples, rate) {
      write(samples);
      return told(parts.cut(rate));
    },
    /** A stream begins. */
    begin: (rate) => sound(parts.begin(rate)),
    /** Hears samples; the presses now certain, their onsets in seconds from the beginning. */
    push(samples) {
      write(samples);
      return heard(parts.push());
    },
    /** So many samples were lost here. */
    gap: (samples) => heard(parts.gap(samples)),
    /** The stream is over. */
    finish: () => heard(parts.finish()),
    /** Bytes it takes. */
    bytes: () => parts.memory.buffer.byteLength,
  };
}

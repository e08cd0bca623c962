// Sound taken with the microphone for some seconds, cut to what sounds, and written as a WAV file.

import { openMicrophone } from "./microphone.js";

/** @import { Block, Microphone, Taken, Taking } from "../../client-checks/client" */

const FRAME_S = 0.01;
const EDGE_S = 0.08; // kept before and after what sounds
const UNDER_PEAK = 10 ** (-30 / 20);
const OVER_NOISE = 10 ** (10 / 20);

/**
 * Samples as a WAV file: one channel, 16 bits.
 * @param {Int16Array} samples
 * @param {number} rate
 */
export function wav(samples, rate) {
  const bytes = new DataView(new ArrayBuffer(44 + 2 * samples.length));
  /**
   * @param {number} at
   * @param {string} chars
   */
  const name = (at, chars) => [...chars].forEach((c, i) => bytes.setUint8(at + i, c.charCodeAt(0)));
  name(0, "RIFF");
  bytes.setUint32(4, 36 + 2 * samples.length, true);
  name(8, "WAVEfmt ");
  bytes.setUint32(16, 16, true);
  bytes.setUint16(20, 1, true);
  bytes.setUint16(22, 1, true);
  bytes.setUint32(24, rate, true);
  bytes.setUint32(28, 2 * rate, true);
  bytes.setUint16(32, 2, true);
  bytes.setUint16(34, 16, true);
  name(36, "data");
  bytes.setUint32(40, 2 * samples.length, true);
  samples.forEach((s, i) => bytes.setInt16(44 + 2 * i, s, true));
  return bytes.buffer;
}

/**
 * The part that sounds: from the first to the last frame well above the noise, and a little around.
 * @param {Int16Array} samples
 * @param {number} rate
 */
export function trimmed(samples, rate) {
  const size = Math.max(1, Math.round(rate * FRAME_S));
  const levels = [];
  for (let i = 0; i + size <= samples.length; i += size) {
    let sum = 0;
    for (let j = i; j < i + size; j += 1) sum += samples[j] ** 2;
    levels.push(Math.sqrt(sum / size));
  }
  if (levels.length === 0) return samples;
  const noise = [...levels].sort((a, b) => a - b)[Math.floor(levels.length / 10)];
  const floor = Math.max(Math.max(...levels) * UNDER_PEAK, Math.min(noise * OVER_NOISE, Math.max(...levels) / 2));
  const first = levels.findIndex((l) => l >= floor);
  const last = levels.findLastIndex((l) => l >= floor);
  const edge = Math.round(EDGE_S * rate);
  return samples.slice(Math.max(0, first * size - edge), Math.min(samples.length, (last + 1) * size + edge));
}

/**
 * How loud a peak is for a meter, 0 to 1.
 * @param {number} peak
 */
export const loudness = (peak) => (peak > 0 ? Math.max(0, 1 + Math.log10(peak) / 3) : 0);

/**
 * Takes sound until it is stopped, `most` seconds have passed or `enough` says so. `passed(seconds, peak)` is called ten
 * times a second, `done(taken)` once at the end, `lost(why)` where the microphone is taken away before.
 * @param {{ most: number, passed: (seconds: number, peak: number) => void, done: (taken: Taken) => void, lost: (why: string) => void, enough?: (peaks: number[]) => boolean, open?: typeof openMicrophone }} wanted
 * @returns {Promise<Taking>}
 */
export async function take({ most, passed, done, lost, enough = () => false, open = openMicrophone }) {
  /** @type {Int16Array[]} */
  const blocks = [];
  /** @type {number[]} */
  const peaks = [];
  let over = false;
  /** @type {{ microphone?: Microphone }} */
  const line = {};

  const sofar = () => {
    const samples = new Int16Array(blocks.reduce((sum, b) => sum + b.length, 0));
    let at = 0;
    for (const b of blocks) {
      samples.set(b, at);
      at += b.length;
    }
    return { samples, rate: line.microphone?.rate ?? 0 };
  };
  async function stop() {
    if (over) return;
    over = true;
    await line.microphone?.stop();
    done(sofar());
  }
  /** @param {Block} block */
  function block({ samples, peak }) {
    // The first blocks may come before the microphone's rate is known here.
    if (over || !line.microphone) return;
    blocks.push(samples);
    peaks.push(peak);
    const seconds = peaks.length * (samples.length / line.microphone.rate);
    passed(seconds, peak);
    if (seconds >= most || enough(peaks)) stop();
  }
  line.microphone = await open(block, (why) => {
    if (!over) lost(why);
    over = true;
  });
  return { stop, sofar };
}

const TENTHS_AFTER = 12; // blocks of quiet after a press, in tenths of a second
const STANDS_OUT = 4; // times the room's peak

/**
 * Whether something sounded and it has been quiet since.
 * @param {number[]} peaks of a tenth of a second each
 */
export function pressed(peaks) {
  if (peaks.length < 2 * TENTHS_AFTER) return false;
  const room = [...peaks].sort((a, b) => a - b)[Math.floor(peaks.length / 4)];
  const loud = peaks.findLastIndex((p) => p > STANDS_OUT * Math.max(room, 0.001));
  return loud >= 0 && peaks.length - 1 - loud >= TENTHS_AFTER;
}

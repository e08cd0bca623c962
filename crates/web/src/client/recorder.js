// Records a button's sound and puts it into the upload form as a WAV file; what follows is the same as for any file.

import { button, el, find, text } from "./dom.js";
import { inWords, noMicrophone, openMicrophone } from "./microphone.js";
import { number, say } from "./say.js";

/** @import { Block, Microphone } from "../../client-checks/client" */

const MOST_S = 4;
const LEAST_S = 0.15;
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

/** @param {HTMLElement} root */
function wire(root) {
  /** @type {HTMLFormElement} */
  const form = find(`#${root.dataset.recorder}`);
  /** @type {HTMLInputElement} */
  const file = find("input[type=file]", form);
  const said = el("p", { role: "status", "data-test": "record-state" });
  const level = el("meter", {
    class: "wide",
    min: 0,
    max: 1,
    value: 0,
    "aria-label": say("client-ear-loudness"),
    hidden: true,
  });
  const result = el("div", { class: "stack" });
  const why = noMicrophone();
  /** @type {Microphone | undefined} */
  let microphone;
  /** @type {Int16Array[]} */
  let blocks = [];
  /** @type {number | undefined} */
  let first; // position at which the recording began

  const go = button(say("client-ear-record"), "record", () => (microphone ? stop() : start()), { class: "wide" });
  const how = el("p", { class: "hint" }, say("client-ear-record-how"));
  root.append(go, how, level, said, result);
  if (why) {
    go.disabled = true;
    text(said, why === "insecure" ? say("client-ear-record-insecure") : say("client-ear-record-unable"));
    return;
  }

  /** @param {Block} sound */
  function block({ position, samples, peak }) {
    if (!microphone) return;
    first ??= position;
    blocks.push(samples);
    level.value = peak > 0 ? Math.max(0, 1 + Math.log10(peak) / 3) : 0;
    const passed = (position + samples.length - first) / microphone.rate;
    text(said, say("client-ear-recording", { seconds: number(Math.max(0, MOST_S - passed)) }));
    if (passed >= MOST_S) stop();
  }

  async function start() {
    blocks = [];
    first = undefined;
    result.replaceChildren();
    go.disabled = true;
    text(said, say("client-ear-asking"));
    try {
      microphone = await openMicrophone(block, (words) => {
        microphone = undefined;
        shown(false);
        text(said, words);
      });
      shown(true);
    } catch (error) {
      text(said, inWords(error));
    }
    go.disabled = false;
  }

  /** @param {boolean} recording */
  function shown(recording) {
    level.hidden = !recording;
    text(
      go,
      recording ? say("client-ear-stop") : blocks.length ? say("client-ear-record-again") : say("client-ear-record"),
    );
    go.setAttribute("aria-pressed", String(recording));
  }

  async function stop() {
    const open = microphone;
    if (!open) return;
    const { rate } = open;
    microphone = undefined;
    await open.stop();
    shown(false);
    const all = new Int16Array(blocks.reduce((sum, b) => sum + b.length, 0));
    let at = 0;
    for (const b of blocks) {
      all.set(b, at);
      at += b.length;
    }
    const clip = trimmed(all, rate);
    const seconds = clip.length / rate;
    if (seconds < LEAST_S || clip.every((s) => s === 0)) {
      text(said, say("client-ear-record-nothing"));
      return;
    }
    text(said, say("client-ear-recorded", { seconds: number(seconds, 1) }));
    const sound = new File([wav(clip, rate)], "recording.wav", { type: "audio/wav" });
    result.replaceChildren(
      el("audio", {
        controls: true,
        src: URL.createObjectURL(sound),
        "aria-label": say("client-ear-what-recorded"),
        "data-test": "record-play",
      }),
      button(
        say("client-ear-record-keep"),
        "record-keep",
        () => {
          const files = new DataTransfer();
          files.items.add(sound);
          file.files = files.files;
          form.requestSubmit();
        },
        { class: "primary wide" },
      ),
    );
  }
}

if (typeof document !== "undefined")
  for (const root of document.querySelectorAll("[data-recorder]")) wire(/** @type {HTMLElement} */ (root));

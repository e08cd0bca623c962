// The engine beside the page: samples come by position, presses go back. What is missing between two blocks is heard as
// silence, and after a long gap the engine begins anew.

import { makeEngine } from "./engine.js";

/** @import { Engine, FromEar, ToEar } from "../../client-checks/client" */

const MOST_GAP_S = 30;

const page = /** @type {DedicatedWorkerGlobalScope} */ (/** @type {unknown} */ (self));
/** @type {Engine} */
let engine;
let rate = 0;
/** @type {string | undefined} */
let stream; // named by the page
let base = 0; // position of the engine's first sample
let next = 0; // position of the next sample
let begun = false; // whether the stream has had a sample

/** @param {Int16Array} samples */
const floats = (samples) => Float32Array.from(samples, (v) => v / 32768);

/** @param {FromEar} message */
const tell = (message) => page.postMessage(message);

/**
 * @param {import("../../client-checks/client").HeardNow[]} presses
 * @param {number} [samples] that were taken
 */
function heard(presses, samples = 0) {
  const from = base / rate;
  tell({ heard: presses.map((p) => ({ ...p, onset: p.onset + from })), stream, samples });
}

/** Hears what is still undecided. */
function finish() {
  if (begun) heard(engine.finish());
  begun = false;
}

/** @param {number} position */
function anew(position) {
  finish();
  engine.begin(rate);
  base = position;
  next = position;
  begun = true;
}

/** @type {{ [K in keyof ToEar]: (content: ToEar[K]) => unknown }} */
const asked = {
  async open({ module, clips, words, speeds, clipRate }) {
    engine = await makeEngine(await WebAssembly.compile(module));
    clips.forEach((clip, i) => engine.clip(clip, clipRate, words[i], speeds[i]));
    if (clips.length) engine.begin(clipRate); // the clips are worked out now, while the microphone is asked for
    tell({ ready: { bytes: engine.bytes() } });
  },
  begin({ stream: name, rate: wanted }) {
    finish();
    stream = name;
    rate = wanted;
  },
  sound({ position, samples }) {
    const gap = position - next;
    if (!begun || gap > MOST_GAP_S * rate) anew(position);
    else if (gap > 0) heard(engine.gap(gap));
    const presses = engine.push(floats(samples));
    next = position + samples.length;
    heard(presses, samples.length);
  },
  prove({ samples, rate, word }) {
    tell({ proof: engine.prove(floats(samples), rate, word) });
  },
  cut({ samples, rate }) {
    tell({ cut: engine.cut(floats(samples), rate) });
  },
  end() {
    finish();
    tell({ ended: true });
  },
};

/** @type {Promise<unknown>} */
let before = Promise.resolve(); // one after the other, also while the module is made ready
page.onmessage = (/** @type {MessageEvent<Partial<ToEar>>} */ { data }) => {
  const [kind, content] = Object.entries(data)[0];
  before = before
    .then(() => asked[/** @type {keyof ToEar} */ (kind)](/** @type {any} */ (content)))
    .catch((error) => tell({ wrong: String(error?.message ?? error) }));
};

// Hears a corpus with the module of the pages, in Node, as a page would: 20 s of sound are 200 blocks of a tenth of a second.
//
//   node benches/listen/ear.mjs MODULE.wasm CORPUS [samples a block]
//
// The corpus is one of `lab hearing scenes`. Prints JSON: presses of each sound, and how long all took; processor time, so
// that a busy machine tells the same.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { makeEngine } from "../../crates/web/src/client/engine.js";

const [file, corpus, wanted] = process.argv.slice(2);
const truth = JSON.parse(readFileSync(join(corpus, "truth.json"), "utf8"));
const rate = truth.sample_rate;
const block = Number(wanted ?? rate / 10);

/** Samples of a WAV file of one channel and 16 bits, whose header has 44 bytes. */
function samples(name) {
  const bytes = readFileSync(join(corpus, name));
  const whole = new Int16Array(bytes.buffer.slice(bytes.byteOffset + 44, bytes.byteOffset + bytes.length));
  return Float32Array.from(whole, (v) => v / 32768);
}

/** Seconds of processor time so far. */
function spent() {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
}

const bytes = readFileSync(file);
const clips = truth.clips.map((c) => samples(c.file));
const lengths = clips.map((c) => c.length / rate);
const opened = spent();
const engine = await makeEngine(await WebAssembly.compile(bytes));
clips.forEach((clip, place) => engine.clip(clip, rate, place));
engine.begin(rate);
const ready = 1000 * (spent() - opened);

let seconds = 0;
let busy = 0;
const heard = [];
const late = []; // seconds from a clip's end to its press
for (const sound of truth.sounds) {
  engine.begin(rate);
  const x = samples(sound.file);
  const presses = [];
  const start = spent();
  for (let at = 0; at < x.length; at += block) {
    const now = engine.push(x.subarray(at, at + block));
    for (const p of now) late.push((at + block) / rate - p.onset - lengths[p.clip] / p.speed);
    presses.push(...now);
  }
  presses.push(...engine.finish());
  busy += spent() - start;
  seconds += x.length / rate;
  heard.push(presses.map(({ clip, ...press }) => ({ word: truth.clips[clip].word, ...press })));
}
const megabytes = engine.bytes() / 2 ** 20;
const timing = { words: clips.length, seconds, times: seconds / busy, ready, latest: Math.max(...late), megabytes, module: bytes.length };
console.log(JSON.stringify({ heard, timing }));

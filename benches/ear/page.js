// What run.mjs asks of a page: the client's own worker and microphone, with sound and clips of a corpus.

import { openMicrophone } from "/client/microphone.js";

const BLOCK_S = 0.1;
const AHEAD = 50; // blocks handed to the worker before it answered
const RING_S = 40; // what client/ear.js lets wait; what comes after is dropped
let worker;
let rate;

const wav = async (url) => new Int16Array((await (await fetch(url)).arrayBuffer()).slice(44));
const floats = (whole) => Float32Array.from(whole, (v) => v / 32768);
const say = (kind, content, transfer) => worker.postMessage({ [kind]: content }, transfer);

/** Opens the ear with a corpus' clips: milliseconds until it is ready, bytes of its module. */
globalThis.load = async (corpus) => {
  worker?.terminate();
  const truth = await (await fetch(`${corpus}/truth.json`)).json();
  rate = truth.sample_rate;
  const clips = [];
  for (const { file } of truth.clips) clips.push(floats(await wav(`${corpus}/${file}`)));
  const module = await (await fetch("/module.wasm")).arrayBuffer();
  const begun = performance.now();
  worker = new Worker("/client/ear-worker.js", { type: "module" });
  const ready = new Promise((resolve, reject) => {
    worker.onmessage = ({ data }) => (data.ready ? resolve(data.ready) : reject(new Error(data.wrong)));
    worker.onerror = (event) => reject(new Error(event.message));
  });
  say("open", { module, clips, clipRate: rate }, [module, ...clips.map((c) => c.buffer)]);
  const { bytes } = await ready;
  return { words: clips.length, ready: performance.now() - begun, bytes, sounds: truth.sounds.map((s) => s.file) };
};

/** Hears a sound as quickly as it goes. */
globalThis.race = async (url) => {
  const samples = await wav(url);
  const size = Math.round(rate * BLOCK_S);
  let behind = 0;
  let presses = 0;
  let more = () => {};
  worker.onmessage = ({ data }) => {
    if (data.wrong) throw new Error(data.wrong);
    presses += data.heard?.length ?? 0;
    if (data.samples) behind -= 1;
    more(data.ended);
  };
  const begun = performance.now();
  say("begin", { stream: url, rate });
  for (let position = 0; position + size <= samples.length; position += size) {
    while (behind >= AHEAD) await new Promise((resolve) => (more = resolve));
    behind += 1;
    say("sound", { position, samples: samples.slice(position, position + size) });
  }
  say("end", {});
  while (!(await new Promise((resolve) => (more = resolve))));
  return { seconds: samples.length / rate, took: (performance.now() - begun) / 1000, presses };
};

/** Hears the microphone for some seconds, as the page does. */
globalThis.live = async (seconds) => {
  let sound = 0;
  let behind = 0;
  let mostBehind = 0;
  let dropped = 0;
  let presses = 0;
  let first;
  let last;
  worker.onmessage = ({ data }) => {
    behind -= data.samples ?? 0;
    presses += data.heard?.length ?? 0;
  };
  let microphoneRate;
  const block = ({ position, samples, at }) => {
    first ??= at - 1000 * BLOCK_S;
    last = at;
    sound += samples.length;
    if (behind > RING_S * microphoneRate) dropped += 1;
    else {
      behind += samples.length;
      say("sound", { position, samples });
    }
    mostBehind = Math.max(mostBehind, behind);
  };
  const early = [];
  const microphone = await openMicrophone((b) => (microphoneRate ? block(b) : early.push(b)), console.error);
  say("begin", { stream: "live", rate: microphone.rate });
  microphoneRate = microphone.rate;
  early.forEach(block);
  await new Promise((resolve) => setTimeout(resolve, 1000 * seconds));
  await microphone.stop();
  const heard = sound / microphoneRate;
  const passed = (last - first) / 1000;
  return { passed, heard, lost: Math.max(0, passed - heard), dropped, mostBehind: mostBehind / microphoneRate, presses };
};

globalThis.there = true;

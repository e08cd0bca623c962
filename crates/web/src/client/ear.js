// Hearing on this device: the engine in a worker, its clips kept for when the notebook is away, presses into the outbox.
// No sound goes anywhere but to the worker, and nothing of it is kept.

import { runsHere } from "./engine.js";
import { keep, recall, remember } from "./outbox.js";
import { say } from "./say.js";
import { heardId, uuid7 } from "./uuid.js";

/** @import { Ear, EarOptions, Event, FromEar, Gap, HeardNow, Piece, Stream, ToEar, Vocabulary } from "../../client-checks/client" */

const KEPT = "sayso-ear-1";
const ASK_MS = 3_000;
const RING_S = 40; // so much may wait for the engine; what comes after is dropped, and noted as a gap
const MOST_SURE = 0.9999; // a sound is never as certain as a tap
const END_MS = 5_000;
const SEAT = "sayso-ear";
const MOST_GAPS = 20;

/** Whether this browser can hear by itself. */
export const hearsHere = () =>
  typeof Worker === "function" && "caches" in globalThis && Boolean(globalThis.crypto?.subtle) && runsHere();

/**
 * Bytes that never change under their address.
 * @param {Cache} kept
 * @param {string} url
 */
async function bytes(kept, url) {
  const found = await kept.match(url);
  if (found) return found.arrayBuffer();
  const response = await fetch(url, { credentials: "same-origin" });
  if (!response.ok) throw new Error(`${url}: ${response.status}`);
  await kept.put(url, response.clone());
  return response.arrayBuffer();
}

/**
 * What is listened for: as the notebook says now, or as it said last.
 * @param {Cache} kept
 * @param {string} url
 * @returns {Promise<Vocabulary>}
 */
async function vocabulary(kept, url) {
  const stop = new AbortController();
  const limit = setTimeout(() => stop.abort(), ASK_MS);
  const fresh = await fetch(url, { credentials: "same-origin", signal: stop.signal }).catch(() => undefined);
  clearTimeout(limit);
  if (fresh?.ok && !fresh.redirected) {
    await kept.put(url, fresh.clone());
    return fresh.json();
  }
  const found = await kept.match(url);
  if (found) return found.json();
  throw new Error(fresh ? `${url}: ${fresh.status}` : say("client-ear-waiting", { seconds: "0" }));
}

/**
 * All that hearing needs, from what is kept here where it is, and kept for the next time.
 * @param {{ module: string, words: string }} where
 */
export async function prepare({ module, words: url }) {
  const kept = await caches.open(KEPT);
  const words = await vocabulary(kept, url);
  const [code, ...clips] = await Promise.all([module, ...words.words.map((w) => w.clip)].map((u) => bytes(kept, u)));
  // What an earlier version or an earlier recording left.
  const wanted = new Set([module, url, ...words.words.map((w) => w.clip)].map((u) => new URL(u, location.href).href));
  const ours = `${new URL(url, location.href).href}/`;
  for (const { url: old } of await kept.keys()) {
    if (!wanted.has(old) && (old.startsWith(ours) || old.endsWith(".wasm"))) await kept.delete(old);
  }
  return { words, code, clips };
}

/** Addresses of what else is needed while the notebook is away. */
export const scripts = ["./ear-worker.js", "./engine.js", "./capture.js"].map(
  (name) => new URL(name, import.meta.url).href,
);

/**
 * An ear that is ready for sound.
 * @param {{ module: string, words: string }} where
 * @returns {Promise<Ear>}
 */
export async function openEar(where) {
  const worker = new Worker(scripts[0], { type: "module" });
  try {
    const { words, code, clips } = await prepare(where);
    const ready = new Promise((resolve, reject) => {
      worker.onmessage = ({ data }) => (data.ready ? resolve(data.ready) : reject(new Error(data.wrong)));
      worker.onerror = (event) => reject(new Error(event.message || "worker"));
    });
    const sounds = clips.map((c) => new Float32Array(c));
    // A word with several buttons has several clips and is one word: named by the first.
    const firsts = words.words.map((w) => words.words.findIndex((first) => first.word === w.word));
    const speeds = words.words.map((w) => w.speeds);
    const open = { module: code, clips: sounds, words: firsts, speeds, clipRate: words.rate };
    worker.postMessage({ open }, [code, ...clips]);
    const { bytes: size } = await ready;
    return { worker, words, bytes: size };
  } catch (error) {
    worker.terminate();
    throw error;
  }
}

/**
 * Gaps of this device, the last ones, so that silence is not taken for no press after the page was closed.
 * @returns {Promise<Gap[]>}
 */
export const gaps = async () => (await recall("ear-gaps")) ?? [];

/** @param {Gap} gap */
export async function noteGap(gap) {
  await remember("ear-gaps", [...(await gaps()), gap].slice(-MOST_GAPS));
}

/**
 * A press as an event. Its id follows from the stream, the moment and the word: noted twice it is one.
 * @param {HeardNow} press
 * @param {{ stream: string, began: number, words: Vocabulary, animal: string | undefined, session: string | undefined }} about
 * @returns {Promise<Event>}
 */
export async function event(press, { stream, began, words, animal, session }) {
  const { word } = words.words[press.clip];
  const at = Math.round(began + 1000 * press.onset);
  return {
    id: await heardId(stream, press.onset, word, at),
    home: words.home,
    ...(animal ? { animal } : {}),
    happened_at: new Date(at).toISOString(),
    zone: words.zone,
    recorded_at: new Date().toISOString(),
    source: "heard",
    body: {
      kind: "press",
      word,
      by: "unknown",
      certainty: Math.min(MOST_SURE, press.confidence),
      accident: "unsure",
      speed: press.speed,
      stream,
      ...(animal && session ? { session } : {}),
    },
  };
}

/**
 * A stream that is heard here; spoken to like one that goes to the notebook.
 * `opening`: the ear; `session(at)`: the session that was open then.
 * @param {EarOptions} options
 * @returns {Stream}
 */
export function makeEar({ opening, rate, began, options, animal, session, tell, changed }) {
  /** @type {Ear | undefined} */
  let ear;
  /** @type {Piece[]} */
  const early = []; // what came before the engine was ready
  let behind = 0; // samples it has not heard yet
  let over = false;
  /** @type {Map<string, number>} */
  const streams = new Map(); // when each began
  let current = uuid7();
  streams.set(current, began);
  /** @type {number | undefined} */
  let dropping; // position from which blocks are dropped
  /** @type {{ made: Event, press: HeardNow }[]} */
  const unkept = [];
  let troubled = false;
  let noting = Promise.resolve();
  /** @type {(() => void) | undefined} */
  let leave; // gives the seat to another page
  /** @type {(() => void) | undefined} */
  let ended;
  // The rest follows below; nothing uses it before.
  const stream = /** @type {Stream} */ ({
    lost: 0,
    get link() {
      return over ? "over" : ear ? "ok" : "waiting";
    },
    get waiting() {
      return behind / rate;
    },
  });

  /** @param {{ [K in keyof ToEar]?: ToEar[K] }} message */
  const ask = (message) => ear?.worker.postMessage(message);

  function finish() {
    over = true;
    early.length = 0;
    ear?.worker.terminate();
    opening.then(({ worker }) => worker.terminate()).catch(() => {});
    leave?.();
    ended?.();
  }

  /** @param {string} why */
  function broken(why) {
    if (over) return;
    finish();
    tell("wrong", say("client-ear-broke", { why }));
  }

  /** Puts into the outbox what was heard; what cannot be kept now waits for the next press. */
  async function flush() {
    while (unkept.length > 0) {
      const { made, press } = unkept[0];
      let state = "new";
      try {
        await keep([made], { aside: true });
      } catch (error) {
        // Its id is in the outbox: it was noted before.
        if (!(error instanceof DOMException && error.name === "ConstraintError")) {
          if (!troubled) tell("trouble", String(error));
          troubled = true;
          return;
        }
        state = "known";
      }
      unkept.shift();
      const { says } = /** @type {Ear} */ (ear).words.words[press.clip];
      tell("heard", { id: made.id, says, at: made.happened_at, confidence: press.confidence, state, kept: false });
    }
    if (troubled) tell("trouble", null);
    troubled = false;
  }

  /**
   * @param {HeardNow[]} presses
   * @param {string} of
   */
  async function note(presses, of) {
    const start = streams.get(of) ?? began;
    for (const press of presses) {
      const about = { stream: of, began: start, words: /** @type {Ear} */ (ear).words, animal };
      const open = animal ? await session(start + 1000 * press.onset) : undefined;
      unkept.push({ made: await event(press, { ...about, session: open }), press });
    }
    if (unkept.length > 0) await flush();
  }

  /** @param {MessageEvent<FromEar>} message */
  function answer({ data }) {
    if (data.heard) {
      const { heard, stream: of = current } = data;
      behind -= data.samples ?? 0;
      if (heard.length > 0) noting = noting.then(() => note(heard, of)).catch((error) => broken(String(error)));
      changed();
    }
    if (data.ended) noting.then(finish);
    if (data.wrong) broken(data.wrong);
  }

  /** @param {Ear} ready */
  function begin(ready) {
    if (over) return;
    ear = ready;
    ear.worker.onmessage = answer;
    ear.worker.onerror = (event) => broken(event.message || "worker");
    ask({ begin: { stream: current, rate } });
    for (const sound of early.splice(0)) ask({ sound });
    const says = new Map(ear.words.words.map((w) => [w.word, w.says])); // a word may have several buttons
    tell("go", { words: [...says.values()].sort(), left_out: ear.words.left_out });
    changed();
  }

  /** One page of this device at a time; else each press would be noted by each. */
  function seated() {
    if (!navigator.locks) return opening.then(begin);
    return navigator.locks
      .request(SEAT, options.take ? { steal: true } : { ifAvailable: true }, async (lock) => {
        if (!lock) {
          finish();
          tell("busy", (await recall("ear-since")) ?? Date.now());
          return;
        }
        await remember("ear-since", Date.now());
        const left = new Promise((resolve) => {
          leave = () => resolve(undefined);
        });
        begin(await opening);
        if (!over) await left;
      })
      .catch((error) => {
        if (over) return;
        if (!(error instanceof DOMException && error.name === "AbortError")) throw error;
        finish();
        tell("taken", null);
      });
  }

  const at = (/** @type {number} */ position) => (streams.get(current) ?? began) + (1000 * position) / rate;

  stream.add = (sound) => {
    if (over) return;
    const { position, samples } = sound;
    if (behind > RING_S * rate) {
      dropping ??= position;
      stream.lost += samples.length / rate;
      return;
    }
    if (dropping !== undefined) tell("gap", { from: at(dropping), to: at(position) });
    dropping = undefined;
    behind += samples.length;
    if (ear) ask({ sound });
    else early.push(sound);
  };

  stream.anew = (start) => {
    current = uuid7();
    streams.set(current, start);
    dropping = undefined;
    if (ear) ask({ begin: { stream: current, rate } });
    else early.length = 0;
  };

  // There is no sound here that could be kept.
  stream.keepUnsure = () => {};

  stream.end = () => {
    if (over) return Promise.resolve();
    if (!ear) {
      finish();
      return Promise.resolve();
    }
    return new Promise((resolve) => {
      const patience = setTimeout(() => {
        finish();
      }, END_MS);
      ended = () => {
        clearTimeout(patience);
        resolve(undefined);
      };
      ask({ end: {} });
    });
  };

  seated().catch((error) => {
    if (over) return;
    finish();
    tell("wrong", say("client-ear-not-ready", { why: error?.message ?? String(error) }));
  });
  return stream;
}

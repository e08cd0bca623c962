// Samples on their way to the notebook. What it has not heard for good is kept in a ring of bounded length: after a lost
// connection it is sent again, and what no longer fits is counted as lost.

import { uuid7 } from "./uuid.js";

/** @import { Listening, Piece, Stream } from "../../client-checks/client" */

const RING_S = 40;
const FULL_BYTES = 512 * 1024; // more than this on its way, and sending waits
const FIRST_RETRY_MS = 1_000;
const LAST_RETRY_MS = 10_000;
const END_MS = 5_000;

/**
 * A stream of `rate` frames a second that began at `began` (milliseconds).
 * options: { only, keepUnsure, take }. tell(kind, content): what the notebook says. changed(): the link may have changed.
 * @param {{ url: string, rate: number, began: number, options: Listening, tell: (kind: string, content: any) => void, changed: () => void, connect?: (to: string) => WebSocket }} options
 * @returns {Stream}
 */
export function makeStream({ url, rate, began, options, tell, changed, connect = (to) => new WebSocket(to) }) {
  let id = uuid7();
  /** @type {Piece[]} */
  let ring = [];
  let held = 0; // frames in the ring
  let sent = 0; // position up to which samples were handed to the connection
  /** @type {WebSocket} */
  let socket;
  let ready = false; // the notebook said from where it wants samples
  let over = false;
  let failures = 0;
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let timer;
  /** @type {(() => void) | undefined} */
  let ended; // resolves the waiting for the end
  // The rest follows below; nothing uses it before.
  const stream = /** @type {Stream} */ ({
    lost: 0,
    get link() {
      return over ? "over" : ready ? "ok" : "waiting";
    },
    get waiting() {
      return ready ? 0 : held / rate;
    },
  });

  const begin = () => {
    const { only = false, keepUnsure = false, take = false } = options;
    socket.send(
      JSON.stringify({
        begin: { stream: id, began: new Date(began).toISOString(), rate, only, keep_unsure: keepUnsure, take },
      }),
    );
  };

  function flush() {
    if (!ready || socket.readyState !== 1) return;
    for (const block of ring) {
      if (block.position < sent) continue;
      if (socket.bufferedAmount > FULL_BYTES) return;
      const message = new Uint8Array(8 + block.samples.byteLength);
      new DataView(message.buffer).setBigUint64(0, BigInt(block.position), true);
      message.set(new Uint8Array(block.samples.buffer), 8);
      socket.send(message);
      sent = block.position + block.samples.length;
    }
  }

  /** @param {number} upto */
  function drop(upto) {
    while (ring.length && ring[0].position + ring[0].samples.length <= upto) held -= ring.shift()?.samples.length ?? 0;
  }

  /** @type {Record<string, (content: any) => void>} */
  const said = {
    go({ from }) {
      failures = 0;
      options.take = false;
      sent = from ?? 0;
      ready = true;
      flush();
    },
    upto: (position) => drop(position),
    busy: () => finish(),
    taken: () => finish(),
    wrong: () => finish(),
    ended: () => finish(),
  };

  function finish() {
    over = true;
    ready = false;
    clearTimeout(timer);
    ring = [];
    held = 0;
    ended?.();
    socket?.close();
  }

  function open() {
    if (over) return;
    const mine = connect(url);
    socket = mine;
    mine.binaryType = "arraybuffer";
    mine.onopen = begin;
    mine.onmessage = (message) => {
      if (socket !== mine) return;
      const content = JSON.parse(message.data);
      const kind = typeof content === "string" ? content : Object.keys(content)[0];
      said[kind]?.(content[kind]);
      tell(kind, content[kind]);
      changed();
    };
    mine.onclose = () => {
      if (socket !== mine || over) return;
      ready = false;
      failures += 1;
      changed();
      timer = setTimeout(open, Math.min(LAST_RETRY_MS, FIRST_RETRY_MS * 2 ** (failures - 1)));
    };
  }

  /** Takes a block { position, samples }. */
  stream.add = (block) => {
    if (over) return;
    ring.push(block);
    held += block.samples.length;
    while (held > RING_S * rate) {
      const oldest = ring.shift();
      if (!oldest) break;
      held -= oldest.samples.length;
      if (oldest.position >= sent || !ready) stream.lost += oldest.samples.length / rate;
    }
    flush();
  };

  /** The sound's own clock has jumped: what follows is another stream, begun at another time. */
  stream.anew = (at) => {
    if (!ready) stream.lost += held / rate;
    id = uuid7();
    began = at;
    ring = [];
    held = 0;
    sent = 0;
    if (ready) {
      ready = false;
      begin();
    }
  };

  /** Whether the sound around unsure presses is kept. */
  stream.keepUnsure = (keep) => {
    options.keepUnsure = keep;
    if (ready) socket.send(JSON.stringify({ keep_unsure: keep }));
  };

  /** Ends it; resolves once the notebook has heard all of it, or does not answer. */
  stream.end = () => {
    if (over) return Promise.resolve();
    /** @type {Promise<void>} */
    const done = new Promise((resolve) => {
      const patience = setTimeout(resolve, END_MS);
      ended = () => {
        clearTimeout(patience);
        resolve();
      };
    });
    if (ready) {
      flush();
      socket.send(JSON.stringify("end"));
    } else {
      stream.lost += held / rate;
      finish();
    }
    return done.then(() => over || finish());
  };

  open();
  return stream;
}

// The outbox: an event is on disk here before anything else happens to it, and leaves in order, once.
//
// A row is { n, id, tap, event, state, until, problems, at }. States:
//   held     on disk, may still be completed until `until` (what did it do then?); sent after that
//   kept     on disk, to be sent
//   sent     the notebook has it
//   refused  the notebook will not take it; kept with the reason until a person has seen to it

import * as copy from "./copy.js";
import { got, read, write } from "./db.js";
import { uuid7 } from "./uuid.js";

/** @import { Event, Keeping, Link, Outcome, Row } from "../../client-checks/client" */

const BATCH = 100;
const KEEP_SENT_MS = 3 * 86_400_000;
const LEASE_MS = 15_000;
const FIRST_RETRY_MS = 1_000;
const LAST_RETRY_MS = 20_000;

const me = uuid7();
/** @type {Set<() => void>} */
const listeners = new Set();
/** @type {BroadcastChannel | undefined} */
let others; // the channel to other tabs
/** `link`: ok, waiting (no answer from the notebook, or `why` it takes nothing just now), unpaired, forbidden. */
/** @type {{ state: Link, why: string | undefined, retryAt: number, failures: number }} */
const link = { state: "ok", why: undefined, retryAt: 0, failures: 0 };
/** @type {ReturnType<typeof setTimeout> | undefined} */
let timer;
let pumping = false;
let again = false;

/** @param {boolean} [everywhere] */
function tell(everywhere = true) {
  if (everywhere) others?.postMessage("changed");
  for (const listener of listeners) listener();
}

/**
 * Calls `listener` whenever rows or the link may have changed, in any tab.
 * @param {() => void} listener
 */
export function onChange(listener) {
  listeners.add(listener);
}

/**
 * Keeps events of one tap. Resolves once they are on disk.
 * hold: seconds the last of them may still be completed. sticky: it stays so even if other taps follow.
 * memo: [key, value] written in the same transaction. aside: no tap, so nothing that may still be completed is let go.
 * @param {Event[]} events
 * @param {Keeping} [options]
 */
export async function keep(events, { hold = 0, sticky = false, memo, tap = uuid7(), aside = false } = {}) {
  const at = Date.now();
  await write(async (out, memos) => {
    const held = aside ? [] : await got(out.index("state").getAll("held"));
    for (const row of held) if (!row.sticky || row.until <= at) out.put({ ...row, state: "kept" });
    events.forEach((event, i) => {
      const waits = hold > 0 && i === events.length - 1;
      const row = { id: event.id, tap, event, state: waits ? "held" : "kept", at };
      out.add(waits ? { ...row, until: at + hold * 1000, sticky } : row);
    });
    if (memo) memos.put(memo[1], memo[0]);
  });
  tell();
  pump();
}

/**
 * Completes a held event; false where it has left already, so that a correction is needed.
 * @param {string} id
 * @param {object} change
 * @param {boolean} [release]
 */
export async function complete(id, change, release = false) {
  const done = await write(async (out) => {
    const row = await got(out.index("id").get(id));
    if (!row || row.state !== "held" || row.until <= Date.now()) return false;
    out.put({
      ...row,
      event: { ...row.event, body: { ...row.event.body, ...change } },
      state: release ? "kept" : "held",
    });
    return true;
  });
  if (done) tell();
  if (release) pump();
  return done;
}

/**
 * Lets a held event go.
 * @param {string} id
 */
export const release = (id) => complete(id, {}, true);

/** All rows made here in the last days, in order. */
export const rows = () => read((out) => got(out.getAll()));

/**
 * Something remembered.
 * @param {string} key
 */
export const recall = (key) => read((_, memos) => got(memos.get(key)));

/**
 * Remembers something; undefined forgets it.
 * @param {string} key
 * @param {unknown} value
 */
export async function remember(key, value) {
  await write((_, memos) =>
    got(/** @type {IDBRequest} */ (value === undefined ? memos.delete(key) : memos.put(value, key))),
  );
}

/**
 * Takes a refused event off the list once a person has seen to it.
 * @param {string} id
 */
export async function dismiss(id) {
  await write(async (out) => {
    const row = await got(out.index("id").get(id));
    if (row?.state === "refused") out.delete(row.n);
  });
  tell();
}

/**
 * Sends a refused event again.
 * @param {string} id
 */
export async function resend(id) {
  await write(async (out) => {
    const row = await got(out.index("id").get(id));
    if (row?.state === "refused") out.put({ ...row, state: "kept", problems: undefined });
  });
  tell();
  pump();
}

/** Counts for the status line, and how it stands with the notebook. */
export async function status() {
  const [kept, held, sent, refused] = await read((out) =>
    Promise.all(["kept", "held", "sent", "refused"].map((s) => got(out.index("state").count(s)))),
  );
  return { kept: kept + held, sent, refused, link: link.state, why: link.why, retryAt: link.retryAt };
}

/**
 * What is to be sent now: kept rows and held ones whose time is up, in order.
 * @param {Row[]} all
 * @param {number} now
 * @param {number} [most]
 */
export function sendable(all, now, most = BATCH) {
  return all
    .filter((row) => row.state === "kept" || (row.state === "held" && (row.until ?? 0) <= now))
    .sort((a, b) => a.n - b.n)
    .slice(0, most);
}

/**
 * Milliseconds to wait after so many failures in a row; up to a quarter longer by chance.
 * @param {number} failures
 * @param {number} [chance]
 */
export function backoff(failures, chance = Math.random()) {
  return Math.min(LAST_RETRY_MS, FIRST_RETRY_MS * 2 ** Math.max(0, failures - 1)) * (1 + chance / 4);
}

/**
 * What becomes of each sent row by the notebook's answer.
 * @param {Row[]} sent
 * @param {Outcome[]} outcomes
 */
export function settled(sent, outcomes) {
  return sent.map((row, i) => {
    const { result, problems } = outcomes[i] ?? {};
    if (result === "new" || result === "duplicate") return { ...row, state: "sent", problems: undefined };
    if (result === "refused" || result === "conflict") return { ...row, state: "refused", problems: problems ?? [] };
    return { ...row, state: "kept" };
  });
}

// One sender at a time over all tabs. Were there two after all, sending twice does no harm: ids make it once.
/** @param {(renew: () => unknown) => Promise<void>} work */
async function alone(work) {
  if (navigator.locks) {
    return navigator.locks.request("sayso-outbox", { ifAvailable: true }, (lock) =>
      lock ? work(() => {}) : undefined,
    );
  }
  const take = () =>
    write(async (_, memos) => {
      const lease = await got(memos.get("lease"));
      if (lease && lease.owner !== me && lease.until > Date.now()) return false;
      memos.put({ owner: me, until: Date.now() + LEASE_MS }, "lease");
      return true;
    });
  if (!(await take())) return undefined;
  try {
    return await work(take);
  } finally {
    await write(async (_, memos) => {
      if ((await got(memos.get("lease")))?.owner === me) memos.delete("lease");
    });
  }
}

/**
 * Why the notebook takes nothing just now, in its own words where it gave any a person can act on (a full disk, say).
 * @param {{ status: number, body?: { error?: string } }} options
 */
export function reason({ status, body }) {
  return status === 503 || status === 507 ? body?.error : undefined;
}

/** @param {number} ms */
function later(ms) {
  clearTimeout(timer);
  timer = setTimeout(pump, ms);
}

/**
 * @param {Link} state
 * @param {number} [wait]
 * @param {string} [why]
 */
function failed(state, wait, why) {
  link.failures += 1;
  link.state = state;
  link.why = why;
  link.retryAt = Date.now() + (wait ?? backoff(link.failures));
  later(link.retryAt - Date.now());
}

/** @param {Row[]} batch */
async function post(batch) {
  const stop = new AbortController();
  const limit = setTimeout(() => stop.abort(), LEASE_MS - 3_000);
  try {
    const response = await fetch("/api/events", {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify(batch.map((row) => row.event)),
      credentials: "same-origin",
      signal: stop.signal,
    });
    const body = await response.json().catch(() => undefined);
    return { status: response.status, body, wait: Number(response.headers.get("retry-after")) * 1000 || undefined };
  } finally {
    clearTimeout(limit);
  }
}

/** @param {() => unknown} renew */
async function sendAll(renew) {
  let most = BATCH;
  for (;;) {
    const batch = sendable(await rows(), Date.now(), most);
    if (batch.length === 0) return;
    await renew();
    let answer;
    try {
      answer = await post(batch);
    } catch {
      return failed("waiting");
    }
    if (answer.status === 200 && Array.isArray(answer.body)) {
      link.failures = 0;
      link.state = "ok";
      link.why = undefined;
      const after = settled(batch, answer.body);
      await write((out) => Promise.all(after.map((row) => got(out.put(row)))));
      tell();
      if (after.some((row) => row.state === "kept")) return failed("waiting");
    } else if (answer.status === 401) {
      return failed("unpaired", LAST_RETRY_MS);
    } else if (answer.status === 403) {
      return failed("forbidden", LAST_RETRY_MS);
    } else if ((answer.status === 400 || answer.status === 413) && batch.length > 1) {
      most = Math.floor(batch.length / 2); // find the one that cannot be read, and let the others pass
    } else if (answer.status === 400 || answer.status === 413) {
      const what = answer.body?.error ?? "cannot be read by the notebook";
      const problems = [{ field: "", kind: answer.body?.kind ?? "other", what }];
      await write((out) => got(out.put({ ...batch[0], state: "refused", problems })));
      tell();
      most = BATCH;
    } else {
      return failed("waiting", answer.wait, reason(answer));
    }
  }
}

/** This device is not paired any more: its copy of the notebook goes, unless taps wait in it; then pairing is offered. */
export async function unpaired() {
  link.state = "unpaired";
  if (await copy.clearIfSent()) location.assign("/pair");
  else tell();
}

/** Sends what is to be sent, now or when the time has come. */
export async function pump() {
  if (pumping) {
    again = true;
    return;
  }
  pumping = true;
  try {
    do {
      again = false;
      if (Date.now() < link.retryAt && link.state !== "ok") later(link.retryAt - Date.now());
      else await alone(sendAll);
    } while (again);
    const soonest = (await rows()).filter((r) => r.state === "held").map((r) => r.until);
    if (soonest.length && link.state === "ok") later(Math.max(50, Math.min(...soonest) - Date.now() + 20));
  } catch (error) {
    console.error("outbox", error);
    failed("waiting");
  } finally {
    pumping = false;
    tell(false);
  }
}

/** Tries at once, as when the network is back or a person asks. */
export function nudge() {
  link.retryAt = 0;
  pump();
}

/** Begins sending; call once per page. */
export async function begin() {
  if ("BroadcastChannel" in globalThis) {
    others = new BroadcastChannel("sayso-outbox");
    others.addEventListener("message", () => tell(false));
  }
  // Without this a browser short of space may drop the database, unsent taps and all. It may refuse; then we go on.
  navigator.storage?.persist?.().catch((error) => console.warn("no lasting storage", error));
  addEventListener("online", nudge);
  document.addEventListener("visibilitychange", () => document.visibilityState === "visible" && nudge());
  // Another tab may have died with events unsent.
  setInterval(pump, 20_000);
  await write(async (out) => {
    const old = Date.now() - KEEP_SENT_MS;
    const sent = await got(out.index("state").getAll("sent"));
    for (const row of sent) if (row.at < old) out.delete(row.n);
  });
  pump();
}

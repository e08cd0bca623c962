// What this device keeps of the notebook: taps in the database, the pad's page and files in the cache.

import { got, read, write } from "./db.js";

/** @import { Row } from "../../client-checks/client" */

/**
 * Rows that are not in the notebook yet.
 * @param {Row[]} rows
 */
export const unsent = (rows) => rows.filter((row) => row.state !== "sent");

/**
 * Events of rows as lines of JSON, as `sayso import` reads them.
 * @param {Row[]} rows
 */
export const asLines = (rows) => rows.map((row) => `${JSON.stringify(row.event)}\n`).join("");

/** Every row that is not in the notebook yet, in order. */
export const waiting = () => read(async (out) => unsent(await got(out.getAll())));

async function clearCaches() {
  if (!("caches" in globalThis)) return;
  for (const name of await caches.keys()) await caches.delete(name);
}

/** Clears all that is kept here where no tap waits to be sent; whether it did. */
export async function clearIfSent() {
  // One transaction: a tap made meanwhile is either seen or comes after.
  const cleared = await write(async (out, memos) => {
    if (unsent(await got(out.getAll())).length > 0) return false;
    out.clear();
    memos.clear();
    return true;
  });
  if (cleared) await clearCaches();
  return cleared;
}

/** Clears all that is the home's: pages, files, taps that were sent, what the board remembers. What waits stays; how many do. */
export async function clearButWaiting() {
  const count = await write(async (out, memos) => {
    memos.clear();
    const rows = await got(out.getAll());
    for (const row of rows) if (row.state === "sent") out.delete(row.n);
    return unsent(rows).length;
  });
  await clearCaches();
  return count;
}

// The worker keeps pages under this name, each with the home that it is of where a server said so (`worker.js`).
const KEPT = "sayso-pad-1";
const KEEP = "sayso-keep";
const OF_HOME = /^\/a\/([^/]+)\/(board|today)$/;
const LAST = "/last";

/**
 * Which of the pages that were kept, by the home each is of, are of none of these homes. Where nobody said whose one is, it is of none.
 * @param {[string, string | undefined][]} kept path and home
 * @param {Set<string>} homes
 */
export const ofOthers = (kept, homes) =>
  kept
    .filter(([path, home]) => !path.startsWith("/assets/") && path !== LAST && !homes.has(home ?? ""))
    .map(([path]) => path);

/**
 * Clears what is kept of all homes but these: pages, pictures, what the board remembers, taps that were sent. What waits stays.
 * @param {Set<string>} homes
 */
export async function clearHomesBut(homes) {
  if (homes.size === 0) return void (await clearButWaiting());
  /** @type {string[]} */
  let gone = [];
  if ("caches" in globalThis) {
    const kept = await caches.open(KEPT);
    const pages = await Promise.all(
      (await kept.keys()).map(async (page) => {
        const home = (await kept.match(page))?.headers.get(KEEP) ?? undefined;
        return /** @type {[string, string | undefined]} */ ([new URL(page.url).pathname, home]);
      }),
    );
    gone = ofOthers(pages, homes);
    for (const path of gone) await kept.delete(path);
    if (gone.length > 0) {
      await kept.delete(LAST);
      for (const name of await caches.keys()) if (name !== KEPT) await caches.delete(name);
    }
  }
  await write(async (out, memos) => {
    for (const path of gone) {
      const animal = OF_HOME.exec(path)?.[1];
      for (const key of animal ? ["now", "pad"] : []) memos.delete(`${key}-${animal}`);
    }
    for (const row of await got(out.getAll()))
      if (row.state === "sent" && !homes.has(row.event.home)) out.delete(row.n);
  });
}

/**
 * Clears what is kept of an animal whose home does not let this device in any more: its pages, what the board remembers.
 * @param {string} animal
 */
export async function clearAnimal(animal) {
  await write(async (_, memos) => {
    for (const key of ["now", "pad"]) memos.delete(`${key}-${animal}`);
  });
  if (!("caches" in globalThis)) return;
  const kept = await caches.open(KEPT);
  for (const page of ["board", "today"]) await kept.delete(`/a/${animal}/${page}`);
  await kept.delete(LAST);
}

/**
 * Drops the rows of these ids, which were saved.
 * @param {string[]} ids
 */
export async function drop(ids) {
  const saved = new Set(ids);
  await write(async (out) => {
    for (const row of await got(out.getAll())) if (saved.has(row.id)) out.delete(row.n);
  });
  return true;
}

/**
 * Clears all, also the rows of these ids that wait; whether nothing else waited.
 * @param {string[]} ids
 */
export async function clearSaved(ids) {
  await drop(ids);
  return clearIfSent();
}

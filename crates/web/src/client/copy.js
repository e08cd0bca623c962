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

/**
 * Clears all, also the rows of these ids that wait; whether nothing else waited.
 * @param {string[]} ids
 */
export async function clearSaved(ids) {
  const saved = new Set(ids);
  await write(async (out) => {
    for (const row of await got(out.getAll())) if (saved.has(row.id)) out.delete(row.n);
  });
  return clearIfSent();
}

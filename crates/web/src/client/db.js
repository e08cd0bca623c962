// The database of this device: `out` holds every event made here, `memo` small things to remember.

const NAME = "sayso";
const VERSION = 1;
/** @type {Promise<IDBDatabase> | undefined} */
let opening;

/** @returns {Promise<IDBDatabase>} */
function open() {
  opening ??= new Promise((resolve, reject) => {
    const request = indexedDB.open(NAME, VERSION);
    request.onupgradeneeded = () => {
      const out = request.result.createObjectStore("out", { keyPath: "n", autoIncrement: true });
      out.createIndex("id", "id", { unique: true });
      out.createIndex("state", "state");
      request.result.createObjectStore("memo");
    };
    request.onsuccess = () => {
      request.result.onversionchange = () => {
        request.result.close();
        opening = undefined;
      };
      resolve(request.result);
    };
    request.onerror = () => {
      opening = undefined;
      reject(request.error);
    };
  });
  return opening;
}

/**
 * The result of one request.
 * @template T
 * @param {IDBRequest<T>} request
 * @returns {Promise<T>}
 */
export function got(request) {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

/**
 * @template T
 * @param {IDBTransactionMode} mode
 * @param {(out: IDBObjectStore, memos: IDBObjectStore) => T | Promise<T>} work
 */
async function within(mode, work) {
  const db = await open();
  const tx = db.transaction(["out", "memo"], mode, { durability: "strict" });
  const done = new Promise((resolve, reject) => {
    tx.oncomplete = resolve;
    tx.onabort = () => reject(tx.error ?? new DOMException("aborted", "AbortError"));
  });
  let result;
  try {
    result = await work(tx.objectStore("out"), tx.objectStore("memo"));
  } catch (error) {
    try {
      tx.abort();
    } catch {
      // It had ended already; the first error is the one to tell.
    }
    await done.catch(() => {});
    throw error;
  }
  await done; // on disk, not just handed over
  return result;
}

/**
 * Runs `work(out, memo)` in one transaction; resolves once it is on disk. `work` may await only requests of it.
 * @template T
 * @param {(out: IDBObjectStore, memos: IDBObjectStore) => T | Promise<T>} work
 */
export const write = (work) => within("readwrite", work);

/**
 * The same for reading.
 * @template T
 * @param {(out: IDBObjectStore, memos: IDBObjectStore) => T | Promise<T>} work
 */
export const read = (work) => within("readonly", work);

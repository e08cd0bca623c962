// Keeps the pad's page and files for the time the notebook gives no answer. Pages are asked for anew first; only the
// pad itself is answered from what was kept, everything else fails as it should.

const worker = /** @type {ServiceWorkerGlobalScope} */ (/** @type {unknown} */ (self));
const KEPT = "sayso-pad-1";
/** @param {URL} url */
const isPad = (url) => /^\/l\/[^/]+\/board$/.test(url.pathname);
/** @param {URL} url */
const isFile = (url) => url.pathname.startsWith("/assets/");

worker.addEventListener("install", () => worker.skipWaiting());
worker.addEventListener("activate", (event) => event.waitUntil(worker.clients.claim()));

/** @param {Request} request */
async function fileFirst(request) {
  const kept = await caches.open(KEPT);
  const found = await kept.match(request);
  if (found) return found;
  const response = await fetch(request);
  if (response.ok) await kept.put(request, response.clone());
  return response;
}

/** @param {Request} request */
async function pageFirst(request) {
  const kept = await caches.open(KEPT);
  try {
    const response = await fetch(request);
    if (response.ok && !response.redirected) await kept.put(request, response.clone());
    return response;
  } catch (error) {
    const found = await kept.match(request);
    if (found) return found;
    throw error;
  }
}

worker.addEventListener("fetch", (event) => {
  const url = new URL(event.request.url);
  if (event.request.method !== "GET" || url.origin !== worker.location.origin) return;
  if (isFile(url)) event.respondWith(fileFirst(event.request));
  else if (isPad(url) && event.request.mode === "navigate") event.respondWith(pageFirst(event.request));
});

// The page that registers this was loaded before it could watch: it names itself and its files once.
worker.addEventListener("message", (event) => {
  const urls = Array.isArray(event.data)
    ? event.data.map((/** @type {string} */ u) => new URL(u, worker.location.origin))
    : [];
  const wanted = urls.filter((u) => u.origin === worker.location.origin && (isFile(u) || isPad(u)));
  event.waitUntil(
    (async () => {
      const kept = await caches.open(KEPT);
      for (const old of await kept.keys()) {
        const url = new URL(old.url);
        if (isFile(url) && !wanted.some((w) => w.href === url.href)) await kept.delete(old);
      }
      await Promise.allSettled(wanted.map((u) => kept.add(u.href)));
    })(),
  );
});

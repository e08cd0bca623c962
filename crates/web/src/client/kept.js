// On Today: has the page kept for the time the notebook gives no answer. The board does so itself.

async function keep() {
  // Once it watches, it keeps what it sees; what was loaded before, it is told.
  const watched = navigator.serviceWorker.controller !== null;
  await navigator.serviceWorker.register("/sw.js");
  const ready = await navigator.serviceWorker.ready;
  if (watched) return;
  const files = performance.getEntriesByType("resource").map((entry) => entry.name);
  ready.active?.postMessage([location.href, ...files]);
}

if ("serviceWorker" in navigator && /^\/a\/[^/]+\/today$/.test(location.pathname))
  addEventListener("load", () => keep().catch((error) => console.warn("no offline page", error)));

// On Today and on lessons: has the page kept for the time the notebook gives no answer, and with a lesson the booklet of them
// all. The board does so itself. On every page of a home: taps that wait on this device are sent, as soon as any page is open.

const BOOKLET = "/learn/booklet";
const onLessons = /^\/learn(\/[^/]+)?$/.test(location.pathname);

async function keep() {
  // Once it watches, it keeps what it sees; what was loaded before, it is told.
  const watched = navigator.serviceWorker.controller !== null;
  await navigator.serviceWorker.register("/sw.js");
  const ready = await navigator.serviceWorker.ready;
  const lessons = onLessons ? [BOOKLET] : [];
  const files = watched ? [] : performance.getEntriesByType("resource").map((entry) => entry.name);
  const urls = watched ? lessons : [location.href, ...lessons, ...files];
  if (urls.length > 0) ready.active?.postMessage(urls);
}

if ("serviceWorker" in navigator && (onLessons || /^\/a\/[^/]+\/today$/.test(location.pathname)))
  addEventListener("load", () => keep().catch((error) => console.warn("no offline page", error)));

if (document.querySelector("nav.thumb"))
  addEventListener("load", () =>
    import("./outbox.js").then((outbox) => outbox.pump()).catch((error) => console.warn("taps wait", error)),
  );

// Keeps the pad's page, Today, the lessons and their files for the time the notebook gives no answer. Pages are asked for anew
// first; only these are answered from what was kept, every other one by a page that says so and what works.

const worker = /** @type {ServiceWorkerGlobalScope} */ (/** @type {unknown} */ (self));
const KEPT = "sayso-pad-1";
const PICTURES = "sayso-pictures-1";
const MOST_PICTURES = 300;
const BOOKLET = "/learn/booklet";
const LAST = "/last"; // where the home screen opens
const OFFLINE = "/offline"; // in the place of any other page
// On a server an answer says for which home its page may be kept, or “no” where whoever asks does not write there. A notebook at home
// says nothing.
const KEEP = "sayso-keep";
const TIME = "\u{e002}"; // stands for the time in the line on an earlier page
/** @param {URL} url */
const isPad = (url) => /^\/a\/[^/]+\/board$/.test(url.pathname);
/** @param {URL} url */
const isToday = (url) => /^\/a\/[^/]+\/today$/.test(url.pathname);
/** @param {URL} url */
const isLesson = (url) => /^\/learn(\/[^/]+)?$/.test(url.pathname);
/** @param {URL} url */
const isPage = (url) => isPad(url) || isToday(url) || isLesson(url);
/**
 * A page that is a home's.
 * @param {URL} url
 */
const isOfHome = (url) => isPad(url) || isToday(url);
/** @param {URL} url */
const isFile = (url) => url.pathname.startsWith("/assets/");
/** @param {URL} url */
const isPicture = (url) => url.pathname.startsWith("/pictures/");
/**
 * The hash of all files that stands in the address of each.
 * @param {URL} url
 */
const version = (url) => url.pathname.split("/")[2];

worker.addEventListener("install", () => worker.skipWaiting());
worker.addEventListener("activate", (event) => event.waitUntil(worker.clients.claim()));

/**
 * What never changes under its address.
 * @param {Request} request
 * @param {string} where
 */
async function keptFirst(request, where) {
  const kept = await caches.open(where);
  const found = await kept.match(request);
  if (found) return found;
  const response = await fetch(request);
  if (response.ok) await kept.put(request, response.clone());
  if (where === PICTURES) for (const old of (await kept.keys()).slice(0, -MOST_PICTURES)) await kept.delete(old);
  return response;
}

/**
 * Keeps the page that stands in for others, in the language that is read now, with every file that it names. Where it cannot
 * be had, as on a device that is not paired, the one kept before stays.
 */
async function keepOffline() {
  const kept = await caches.open(KEPT);
  const response = await fetch(OFFLINE);
  if (!response.ok || response.redirected) return;
  if (homeOf(response) === "no") return void (await kept.delete(OFFLINE));
  const page = await response.clone().text();
  const files = [...page.matchAll(/(?:href|src)="(\/assets\/[^"]+)"/g)].map((found) => found[1]);
  const had = await Promise.all(files.map((file) => kept.match(file)));
  await Promise.all(files.filter((_, i) => !had[i]).map((file) => kept.add(file)));
  await kept.put(OFFLINE, response);
}

/**
 * Whether this device is not let in there any more: it is led elsewhere, which a navigation sees as a closed answer, or refused.
 * @param {Response} response
 */
const isRefused = (response) =>
  response.type === "opaqueredirect" || response.redirected || [401, 403, 404, 410].includes(response.status);

/** @param {Response | undefined} response */
const homeOf = (response) => response?.headers.get(KEEP) ?? undefined;

/**
 * Forgets what was kept of the home that a page is of: its pages, and what belongs to no page alone.
 * @param {URL} url
 */
async function forget(url) {
  const kept = await caches.open(KEPT);
  const animal = (/** @type {URL} */ of) => of.pathname.split("/")[2];
  const pages = (await kept.keys()).filter((old) => !isFile(new URL(old.url)) && new URL(old.url).pathname !== LAST);
  const homes = await Promise.all(pages.map(async (old) => homeOf(await kept.match(old))));
  const same = (/** @type {Request} */ old) => isOfHome(new URL(old.url)) && animal(new URL(old.url)) === animal(url);
  const home = homes.find((of, i) => of !== undefined && same(pages[i]));
  const gone = pages.filter((old, i) => same(old) || (home !== undefined && homes[i] === home));
  if (gone.length === 0) return;
  await Promise.all([...gone.map((old) => kept.delete(old)), kept.delete(LAST)]);
  for (const name of await caches.keys()) if (name !== KEPT) await caches.delete(name);
}

/**
 * The answer, or where there is none the page that stands in for it.
 * @param {Promise<Response>} answer
 */
async function orOffline(answer) {
  try {
    return await answer;
  } catch (error) {
    const kept = await caches.open(KEPT);
    const found = await kept.match(OFFLINE);
    if (found) return found;
    throw error;
  }
}

/**
 * @param {Request} request
 * @param {(work: Promise<unknown>) => void} beside what may go on after the answer
 */
async function pageFirst(request, beside) {
  const kept = await caches.open(KEPT);
  const url = new URL(request.url);
  try {
    const response = await fetch(request);
    const no = homeOf(response) === "no";
    if (isOfHome(url) && (no || isRefused(response))) await forget(url);
    else if (no) await kept.delete(request);
    else if (response.ok && !response.redirected) {
      await kept.put(request, response.clone());
      if (!isLesson(url)) await kept.put(LAST, new Response(url.pathname));
      beside(keepOffline().catch((error) => console.warn("no page for others", error)));
    }
    return response;
  } catch (error) {
    const found = await kept.match(request);
    if (found) return isPad(url) ? found : earlier(found);
    // A lesson that was never open stands in the booklet.
    if (isLesson(url) && url.pathname !== BOOKLET && (await kept.match(BOOKLET)))
      return Response.redirect(`${BOOKLET}#${url.pathname.split("/")[2] ?? ""}`, 302);
    throw error;
  }
}

/**
 * A page that was kept, with a line that says so and since when.
 * @param {Response} found
 */
async function earlier(found) {
  const page = await found.text();
  /** @param {RegExp} what */
  const told = (what) => what.exec(page)?.[1] ?? "";
  const language = told(/<html lang="([^"]*)"/);
  const at = new Date(found.headers.get("date") ?? NaN);
  const time = Number.isNaN(at.getTime())
    ? "?"
    : new Intl.DateTimeFormat(language === "en" ? "en-GB" : language || "en-GB", {
        weekday: "long",
        day: "numeric",
        month: "long",
        hour: "2-digit",
        minute: "2-digit",
        hourCycle: told(/data-clock="([^"]*)"/) === "h12" ? "h12" : "h23",
      }).format(at);
  const line = told(/<meta name="sayso-earlier" content="([^"]*)">/).replace(TIME, () => time);
  const headers = new Headers();
  for (const name of ["content-type", "content-security-policy"]) {
    const value = found.headers.get(name);
    if (value) headers.set(name, value);
  }
  const said = `<p class="caution" role="status" data-test="earlier">${line}</p>`;
  return new Response(
    page.replace("<h1", () => `${said}<h1`),
    { headers },
  );
}

/** @param {Request} request */
async function lastPage(request) {
  try {
    return await fetch(request);
  } catch (error) {
    const kept = await caches.open(KEPT);
    const path = await (await kept.match(LAST))?.text();
    if (path) return Response.redirect(path, 302);
    throw error;
  }
}

worker.addEventListener("fetch", (event) => {
  const url = new URL(event.request.url);
  if (event.request.method !== "GET" || url.origin !== worker.location.origin) return;
  if (isFile(url)) event.respondWith(keptFirst(event.request, KEPT));
  else if (isPicture(url)) event.respondWith(keptFirst(event.request, PICTURES));
  else if (event.request.mode !== "navigate") return;
  else if (isPage(url)) event.respondWith(orOffline(pageFirst(event.request, (work) => event.waitUntil(work))));
  else if (url.pathname === LAST) event.respondWith(orOffline(lastPage(event.request)));
  else event.respondWith(orOffline(fetch(event.request)));
});

// The page that registers this was loaded before it could watch: it names itself and its files once.
worker.addEventListener("message", (event) => {
  const urls = Array.isArray(event.data)
    ? event.data.map((/** @type {string} */ u) => new URL(u, worker.location.origin))
    : [];
  const own = urls.filter((u) => u.origin === worker.location.origin);
  const [pages, files] = [own.filter(isPage), own.filter(isFile)];
  event.waitUntil(
    (async () => {
      const [kept, pictures] = await Promise.all([caches.open(KEPT), caches.open(PICTURES)]);
      // Files of an earlier version; those of this one may belong to the other page.
      for (const old of files.length > 0 ? await kept.keys() : []) {
        const url = new URL(old.url);
        if (isFile(url) && files.every((file) => version(file) !== version(url))) await kept.delete(old);
      }
      const keepPage = async (/** @type {URL} */ u) => {
        const response = await fetch(u.href);
        if (!response.ok || response.redirected || homeOf(response) === "no") return;
        await kept.put(u.href, response);
        if (u === pages[0] && isOfHome(u)) await kept.put(LAST, new Response(u.pathname));
      };
      await Promise.allSettled([
        ...pages.map(keepPage),
        ...files.map((u) => kept.add(u.href)),
        ...own.filter(isPicture).map((u) => pictures.add(u.href)),
        keepOffline(),
      ]);
    })(),
  );
});

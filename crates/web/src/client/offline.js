// In the place of a page that cannot be had: which pages this device kept, and how many taps wait on it.

import { waiting } from "./copy.js";
import { find, text } from "./dom.js";
import { say } from "./say.js";

/** @type {HTMLElement} */
const root = find("#offline");

async function links() {
  const all = /** @type {HTMLAnchorElement[]} */ ([...root.querySelectorAll("a[data-kept]")]);
  const kept = await Promise.all(all.map((link) => caches.match(link.pathname)));
  all.forEach((link, i) => kept[i] || link.closest("li")?.remove());
  find("[data-part=none-kept]", root).hidden = kept.some(Boolean);
}

async function taps() {
  const n = (await waiting()).length;
  text(find("[data-part=waiting]", root), say("client-offline-waiting", { n }));
}

// Whoever looks again may find more or less: taps are sent by any page that is open.
const look = () => Promise.all([links(), taps()]).catch((error) => console.error("offline", error));
look();
addEventListener("online", () => location.reload());

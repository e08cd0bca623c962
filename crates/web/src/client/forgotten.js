// On the page where devices pair or people sign in: a device that may no longer read the notebook keeps no copy of it. Taps that were never sent are
// the only record of what was seen; they go only after they were saved to a file.

import * as copy from "./copy.js";
import { button, el, find } from "./dom.js";
import { say } from "./say.js";

/** @import { Row } from "../../client-checks/client" */

/** @type {HTMLElement} */
const box = find("#unsent");

/** @param {Row[]} rows */
function save(rows) {
  const link = el("a", {
    href: URL.createObjectURL(new Blob([copy.asLines(rows)], { type: "application/x-ndjson" })),
    download: "unsent-taps.jsonl",
  });
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/** @param {Row[]} rows */
function offer(rows) {
  const n = rows.length;
  const clear = button(say("client-ear-clear"), "clear-copy", async () => {
    if (!confirm(say("client-ear-clear-sure", { count: n }))) return;
    if (await copy.clearSaved(rows.map((row) => row.id))) box.replaceChildren(el("p", {}, say("client-ear-cleared")));
    else await look();
  });
  clear.disabled = true;
  const saving = button(say("client-ear-save-unsent"), "save-unsent", () => {
    save(rows);
    clear.disabled = false;
  });
  const told =
    box.dataset.signedOut === undefined
      ? say("client-ear-unsent", { count: n })
      : say("client-ear-unsent-signed-out", { count: n });
  box.replaceChildren(el("p", {}, told), el("div", { class: "row even" }, saving, clear));
  box.hidden = false;
}

async function look() {
  // Who signed out leaves nothing of the home behind; a device that pairs again goes on where it was.
  if (box.dataset.signedOut === undefined ? await copy.clearIfSent() : (await copy.clearButWaiting()) === 0) return;
  offer(await copy.waiting());
}

look().catch((error) => console.error("copy", error));

// On the pairing page: a device that may no longer read the notebook keeps no copy of it. Taps that were never sent are
// the only record of what was seen; they go only after they were saved to a file.

import * as copy from "./copy.js";
import { button, el, find } from "./dom.js";

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
  const clear = button("Clear this device", "clear-copy", async () => {
    if (
      !confirm(
        `Clear what this device keeps, ${n} unsent ${n === 1 ? "tap" : "taps"} included? See first that the file was saved.`,
      )
    )
      return;
    if (await copy.clearSaved(rows.map((row) => row.id)))
      box.replaceChildren(el("p", {}, "This device keeps nothing of the notebook any more."));
    else await look();
  });
  clear.disabled = true;
  const saving = button("Save them to a file", "save-unsent", () => {
    save(rows);
    clear.disabled = false;
  });
  box.replaceChildren(
    el(
      "p",
      {},
      el("strong", {}, n === 1 ? "1 tap" : `${n} taps`),
      " made on this device are not in the notebook yet. Pair it again and they are sent. If it will not be paired again, save them to a file, which “sayso import” reads, and clear this device.",
    ),
    el("div", { class: "row even" }, saving, clear),
  );
  box.hidden = false;
}

async function look() {
  if (await copy.clearIfSent()) return;
  offer(await copy.waiting());
}

look().catch((error) => console.error("copy", error));

// Taps that wait on this device are the only record of what was seen: they are saved to a file before anything clears them.

import * as copy from "./copy.js";
import { button, el } from "./dom.js";
import { say } from "./say.js";

/** @import { Row } from "../../client-checks/client" */

/** @param {Row[]} rows */
function save(rows) {
  const link = el("a", {
    href: URL.createObjectURL(new Blob([copy.asLines(rows)], { type: "application/x-ndjson" })),
    download: "unsent-taps.jsonl",
  });
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/**
 * Offers to save rows, and then to clear them.
 * @param {HTMLElement} box where
 * @param {Row[]} rows
 * @param {string} told why they wait
 * @param {(ids: string[]) => Promise<boolean>} clears whether all is cleared that was to be
 * @param {() => Promise<void>} again looks anew where it is not
 */
export function offer(box, rows, told, clears, again) {
  const n = rows.length;
  const clear = button(say("client-ear-clear"), "clear-copy", async () => {
    if (!confirm(say("client-ear-clear-sure", { count: n }))) return;
    if (await clears(rows.map((row) => row.id))) box.replaceChildren(el("p", {}, say("client-ear-cleared")));
    else await again();
  });
  clear.disabled = true;
  const saving = button(say("client-ear-save-unsent"), "save-unsent", () => {
    save(rows);
    clear.disabled = false;
  });
  box.replaceChildren(el("p", {}, told), el("div", { class: "row even" }, saving, clear));
  box.hidden = false;
}

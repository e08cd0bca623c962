// On the page of one's homes on a server: what this device keeps of a home that is not among them any more goes. Taps that wait for it
// cannot be sent; they are offered as a file.

import * as copy from "./copy.js";
import { find } from "./dom.js";
import { offer } from "./offer.js";
import { say } from "./say.js";

/** @type {HTMLElement} */
const box = find("#unsent");
const homes = new Set((box.dataset.homes ?? "").split(" ").filter(Boolean));

async function look() {
  await copy.clearHomesBut(homes);
  const rows = (await copy.waiting()).filter((row) => !homes.has(row.event.home));
  if (rows.length === 0) box.hidden = true;
  else offer(box, rows, say("client-ear-unsent-left", { count: rows.length }), copy.drop, look);
}

look().catch((error) => console.error("copy", error));

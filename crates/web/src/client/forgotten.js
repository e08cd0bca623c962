// On the page where devices pair or people sign in: a device that may no longer read the notebook keeps no copy of it. Taps that were never sent are
// the only record of what was seen; they go only after they were saved to a file.

import * as copy from "./copy.js";
import { find } from "./dom.js";
import { offer } from "./offer.js";
import { say } from "./say.js";

/** @type {HTMLElement} */
const box = find("#unsent");

async function look() {
  const signedOut = box.dataset.signedOut !== undefined;
  // Who signed out leaves nothing of the home behind; a device that pairs again goes on where it was.
  if (signedOut ? (await copy.clearButWaiting()) === 0 : await copy.clearIfSent()) return;
  const rows = await copy.waiting();
  const count = rows.length;
  // What was refused is not taken by signing in once more.
  const refused = rows.every((row) => row.state === "refused");
  const told = signedOut
    ? say(refused ? "client-ear-unsent-left" : "client-ear-unsent-signed-out", { count })
    : say("client-ear-unsent", { count });
  offer(box, rows, told, copy.clearSaved, look);
}

look().catch((error) => console.error("copy", error));

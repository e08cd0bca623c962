// How tall what a session asks can get: its panels are laid out once, unseen, before the mat takes what they leave.

import { care } from "./care.js";
import { steps } from "./invitation.js";
import { openings } from "./showing.js";

/** @import { Pad } from "../../client-checks/client" */

/**
 * The height of the tallest of them in px, at the width that `asked` has now, with the longest caution and the line of the
 * session as it is. What an ordinary day asks is longer; it scrolls where it has not the room.
 * @param {Pad} pad
 * @param {HTMLElement} asked
 */
export function tallest(pad, asked) {
  const unseen = /** @type {HTMLElement} */ (asked.cloneNode(true));
  unseen.classList.remove("tight");
  unseen.classList.add("unseen-asked");
  unseen.style.width = `${asked.clientWidth}px`;
  unseen.inert = true;
  for (const named of unseen.querySelectorAll("[data-test]")) named.removeAttribute("data-test");
  const panel = unseen.querySelector(".panel");
  const long = [...pad.words].sort((a, b) => b.says.length - a.says.length)[0];
  const gives = pad.now.rewards.filter((r) => !r.never && r.care);
  const warns = gives.sort((a, b) => (b.care?.length ?? 0) - (a.care?.length ?? 0))[0];
  if (!panel || !long) return 0;
  (asked.parentElement ?? document.body).append(unseen);
  const heights = [...openings(pad, long), ...steps(pad, long)].map((parts) => {
    panel.replaceChildren(...parts.filter((part) => part instanceof Node));
    // Each with the longest caution that can stand in it.
    panel.querySelector(".care")?.replaceWith(care(pad, warns) ?? "");
    return unseen.offsetHeight;
  });
  unseen.remove();
  return Math.max(0, ...heights);
}

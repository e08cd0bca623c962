// How tall what a session asks can get: its panels are laid out once, unseen, before the mat takes what they leave.

import { steps } from "./invitation.js";
import { openings } from "./showing.js";

/** @import { Pad } from "../../client-checks/client" */

/**
 * The height of the tallest of them in px, at the width that `asked` has now, with the care line and the line of the session as
 * they are. What an ordinary day asks is longer; it scrolls where it has not the room.
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
  if (!panel || !long) return 0;
  (asked.parentElement ?? document.body).append(unseen);
  const heights = [...openings(pad, long), ...steps(pad, long)].map((parts) => {
    panel.replaceChildren(...parts.filter((part) => part instanceof Node));
    return unseen.offsetHeight;
  });
  unseen.remove();
  return Math.max(0, ...heights);
}

// What to bear in mind of what a word brings: whether it can be given, and a line of its own where it is given. The line is kept
// free, so that nothing moves.

import { el, openSheet } from "./dom.js";
import { say } from "./say.js";
import { isFood } from "./sitting.js";

/** @import { Pad, RewardNow } from "../../client-checks/client" */

/**
 * Whether there is such a thing, it may be given, and of a food some is left today.
 * @param {Pad} pad
 * @param {RewardNow | undefined} reward
 */
export const canGive = (pad, reward) =>
  reward !== undefined && !reward.never && !(isFood(reward) && pad.ration.pieces(reward) === 0);

/**
 * The line; undefined where nothing of the notebook has a caution.
 * @param {Pad} pad
 * @param {RewardNow | undefined} reward
 */
export function care(pad, reward) {
  if (!pad.now.rewards.some((r) => !r.never && r.cautions.length > 0)) return undefined;
  const all = reward && !reward.never ? reward.cautions : [];
  const read = () =>
    openSheet(say("client-board-care", { food: reward?.name ?? "" }), () =>
      all.map((c) => el("p", { class: "caution" }, c)),
    );
  const line = reward?.care ?? "";
  return el(
    "div",
    { class: "care" },
    all.length > 0 &&
      el(
        "button",
        { type: "button", "data-test": "care", onclick: read, "aria-label": say("client-board-care", { food: line }) },
        el("span", {}, line),
      ),
  );
}

// What is said while sessions rest after strong signs: above the mat where none runs, and in one begun all the same.

import { el } from "./dom.js";
import { restUntil } from "./rest.js";
import { say, weekdayTime } from "./say.js";
import { atRest } from "./swaps.js";

/** @import { Pad, Panel } from "../../client-checks/client" */

/**
 * The note above the mat: until when, whom to ask, and that swaps are over; undefined where nothing rests, or a session runs.
 * @param {Pad} pad
 * @returns {Panel | undefined}
 */
export function note(pad) {
  const rest = pad.view.session ? undefined : restUntil(pad);
  if (!rest) return undefined;
  const swaps = atRest(pad);
  return {
    key: `rests-${rest}-${swaps?.key}`,
    build: () => [
      el(
        "p",
        {},
        `${say("client-board-rest-today", { until: weekdayTime(rest, pad.now.zone) })} `,
        el("span", { "data-test": "whom-to-ask" }, say("client-board-whom-to-ask")),
      ),
      ...(swaps?.build() ?? []),
    ],
  };
}

/**
 * Said in a session that was begun all the same, before an offer and as long as one goes on; not while the card that stops says
 * more.
 * @param {Pad} pad
 */
export function resting(pad) {
  const rest = pad.view.stop || !pad.view.session ? undefined : restUntil(pad);
  return (
    rest &&
    el(
      "p",
      { class: "caution rests", "data-test": "rests" },
      say("client-board-rest-invite", { until: weekdayTime(rest, pad.now.zone) }),
    )
  );
}

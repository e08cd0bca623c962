// The card that stops a session: what was seen, what to do now, whom to ask, and the end in one tap.

import { button, el } from "./dom.js";
import { say } from "./say.js";
import { letGo, settled } from "./settle.js";
import * as showing from "./showing.js";

/** @import { EndReason, Pad, Panel, Stop } from "../../client-checks/client" */

/** @type {Record<Stop, EndReason>} */
const ENDS = { strong: "strong_sign", left: "animal_left", mild: "interrupted" };

/**
 * The card; undefined where nothing stops the session.
 * @param {Pad} pad
 * @returns {Panel | undefined}
 */
export function stopCard(pad) {
  const { stop, session } = pad.view;
  if (!stop || !session) return undefined;
  const { name } = pad.now;
  const ends = () => {
    pad.note([{ kind: "session_end", session, reason: ENDS[stop] }]);
    letGo(pad);
  };
  return {
    key: `${stop}-${session}`,
    build: () => [
      el("p", {}, el("strong", {}, showing.stopSaid(pad, stop)), ` ${say(`client-board-stop-${stop}-do`, { name })}`),
      stop === "strong" && el("p", { "data-test": "whom-to-ask" }, say("client-board-whom-to-ask")),
      el(
        "div",
        { class: "row even" },
        button(say("client-board-end-session"), "stop-end", () => settled(pad, ends)),
        stop === "mild" &&
          button(say("client-board-at-ease", { name }), "stop-carry-on", () =>
            pad.setMemo({ carriedOnAt: Date.now() }),
          ),
        stop === "left" && button(say("client-board-came-back", { name }), "stop-back", () => showing.joined(pad)),
      ),
    ],
  };
}

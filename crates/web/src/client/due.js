// Words that the running session's plan has offered first: whether one is due, and how its pad opens ready to be invited. The
// person still taps, and may show it instead.

import { canGive, care } from "./care.js";
import { button, el, slots, tell } from "./dom.js";
import { CLEAR, done, round, state, toShowing } from "./inviting.js";
import { restUntil } from "./rest.js";
import { say } from "./say.js";

/** @import { InvitationMemo, Pad, Panel, Way } from "../../client-checks/client" */

/**
 * Whether a word is to be offered now, before it is shown: the plan has an invitation left for it, its thing is there, and
 * nothing speaks against it.
 * @param {Pad} pad
 * @param {string} id
 */
export function isDue(pad, id) {
  const { session, stop, invitedNow } = pad.view;
  const word = pad.word(id);
  if (!session || stop || restUntil(pad) || round(pad)) return false;
  if (!word?.may_invite || !canGive(pad, pad.rewardOf(id))) return false;
  return (invitedNow[id] ?? 0) < (pad.invitations()[id] ?? 0);
}

/** @param {Pad} pad */
export const due = (pad) => pad.invites().filter((id) => isDue(pad, id));

/**
 * Opens a word ready to be invited; once that is over, or was not wanted, it is shown on.
 * @param {Pad} pad
 * @param {string} word
 */
export const ready = (pad, word) =>
  pad.setMemo({
    mode: "invitation",
    invitation: { ...state(pad), ...CLEAR, word, other: undefined, myself: true, back: true },
  });

/**
 * Shows it after all: the plan's invitations of it lapse for this session.
 * @param {Pad} pad
 * @param {string} word
 */
async function showInstead(pad, word) {
  const { session } = pad.view;
  if (session) {
    const plan = pad.plan(session);
    await pad.setMemo({ ...toShowing(pad), plan: { ...plan, invitations: { ...plan.invitations, [word]: 0 } } });
  }
  return pad.press(word, "person");
}

/**
 * What is asked once such a word was tapped.
 * @param {Pad} pad
 * @param {InvitationMemo & { word: string }} s
 * @param {{ way: Way, wait: number }} asked
 * @param {() => unknown} offered
 * @returns {Panel}
 */
export function readyPanel(pad, s, { way, wait }, offered) {
  const [word, { name }] = [pad.says(s.word), pad.now];
  const several = due(pad).length > 1;
  const drawn = () => pad.setMemo({ invitation: { ...state(pad), myself: false, word: undefined, back: undefined } });
  return {
    key: `ready-${s.word}-${way}-${wait}-${several}-${pad.view.joined}`,
    build: () => [
      tell(
        el(
          "p",
          { class: "small", "data-test": "ready" },
          pad.view.joined
            ? say("client-board-ready", { word, name, n: wait })
            : say("client-board-only-there", { name }),
        ),
      ),
      care(pad, pad.rewardOf(s.word)),
      slots({
        give: button(say("client-board-ready-wait"), "offer", offered, { class: "primary" }),
        show: button(say("client-board-i-press-word", { word }), "ready-show", () => showInstead(pad, s.word)),
        other: several && button(say("client-board-ready-draw"), "round-instead", drawn),
        more: button(say("client-board-cancel-one"), "ready-cancel", () => done(pad)),
      }),
    ],
  };
}

// A catch: the animal asked without a button; answer by showing the word.

import { care } from "./care.js";
import { button, el, slots, tell } from "./dom.js";
import { restUntil } from "./rest.js";
import { givePanel, padState as showState, thenPanel } from "./showing.js";
import { isA } from "./sitting.js";
import { say } from "./say.js";

/** @import { Pad } from "../../client-checks/client" */
/** @import { Messages } from "../../client-checks/messages" */

const OPEN_MS = 120_000;
const HOLD_S = 90;
/** What is written down, whatever the reader's language; by message. */
const WAYS = {
  looked: "looked at it",
  went: "went to it",
  brought: "brought it",
  sound: "a sound",
  touched: "touched me",
};

/**
 * @param {Pad} pad
 * @param {string} word
 */
export const padState = (pad, word) => {
  const press = pad.view.pending[word];
  return press?.body.by === "person"
    ? showState(pad, word)
    : { off: Boolean(pad.view.stop), does: say("client-board-asked-for", { name: pad.now.name }) };
};

/**
 * It asked for this; or, once shown, it was given.
 * @param {Pad} pad
 * @param {string} word
 */
export function tap(pad, word) {
  const press = pad.view.pending[word];
  if (press?.body.by === "person") return pad.deliver(press);
  return pad.note([{ kind: "catch", word, shown: false, ...pad.in() }], { hold: HOLD_S, sticky: true });
}

/** @param {Pad} pad */
export function panel(pad) {
  const notGiven = pad.view.session ? undefined : givePanel(pad);
  const open = pad.view.stand
    .filter(isA("catch"))
    .filter((e) => Date.now() - Date.parse(e.happened_at) < OPEN_MS)
    .at(-1);
  const shown = open?.body.shown;
  if (!open || (shown && !pad.view.pending[open.body.word])) {
    return (
      notGiven ??
      thenPanel(pad) ?? {
        key: "catch",
        build: () => [
          tell(el("p", { class: "quiet" }, say("client-board-tap-asked", { name: pad.now.name }))),
          care(pad, undefined),
          slots({}),
        ],
      }
    );
  }
  const { word, how } = open.body;
  const press = pad.view.pending[word];
  // After strong signs what it asked for is given, and no button is shown for it.
  const shows = !shown && !restUntil(pad) && !pad.view.stop;
  const [looked, went, brought, sound, touched] = Object.entries(WAYS).map(([id, w]) =>
    button(
      say(/** @type {keyof Messages} */ (`client-board-how-${id}`)),
      "catch-how",
      () => pad.amend(open, { how: w }),
      { "aria-pressed": String(how === w) },
    ),
  );
  return {
    key: `catch-${open.id}-${how}-${shows}-${press?.id}`,
    build: () => [
      tell(
        el(
          "p",
          {},
          say(shows ? "client-board-catch-show" : "client-board-catch-give", {
            name: pad.now.name,
            word: pad.says(word),
          }),
        ),
      ),
      care(pad, pad.rewardOf(word)),
      slots({
        give:
          Boolean(shown) &&
          press &&
          button(say("client-board-given"), "given", () => pad.deliver(press), { class: "primary" }),
        took: looked,
        ignored: went,
        away: brought,
        show:
          shows &&
          button(
            say("client-board-i-press-word", { word: pad.says(word) }),
            "catch-show",
            async () => {
              await pad.press(word, "person");
              await pad.amend(open, { shown: true });
            },
            { class: "primary" },
          ),
        no: sound,
        other: touched,
      }),
    ],
  };
}

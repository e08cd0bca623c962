// A catch: the animal asked without a button; answer by showing the word.

import { care } from "./care.js";
import { button, el, slots, tell } from "./dom.js";
import { padState as showState, thenPanel } from "./showing.js";
import { isA } from "./sitting.js";

/** @import { Pad } from "../../client-checks/client" */

const OPEN_MS = 120_000;
const HOLD_S = 90;
const WAYS = ["looked at it", "went to it", "brought it", "a sound", "touched me"];

/**
 * @param {Pad} pad
 * @param {string} word
 */
export const padState = (pad, word) => {
  const press = pad.view.pending[word];
  return press?.body.by === "person" ? showState(pad, word) : { does: "It asked for" };
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
  const open = pad.view.stand
    .filter(isA("catch"))
    .filter((e) => Date.now() - Date.parse(e.happened_at) < OPEN_MS)
    .at(-1);
  const shown = open?.body.shown;
  if (!open || (shown && !pad.view.pending[open.body.word])) {
    return (
      thenPanel(pad) ?? {
        key: "catch",
        build: () => [
          tell(el("p", { class: "quiet" }, `${pad.now.name} asked without a button? Tap the word for it.`)),
          care(pad, undefined),
          slots({}),
        ],
      }
    );
  }
  const { word, how } = open.body;
  const press = pad.view.pending[word];
  const [looked, went, brought, sound, touched] = WAYS.map((w) =>
    button(w, "catch-how", () => pad.amend(open, { how: w }), { "aria-pressed": String(how === w) }),
  );
  return {
    key: `catch-${open.id}-${how}-${shown}-${press?.id}`,
    build: () => [
      tell(
        el(
          "p",
          {},
          "It asked for ",
          el("strong", {}, pad.says(word)),
          shown ? ". Now give it." : ". Press its button now, say the word, then give it.",
          " How did it ask?",
        ),
      ),
      care(pad, pad.rewardOf(word)),
      slots({
        give: Boolean(shown) && press && button("Given", "given", () => pad.deliver(press), { class: "primary" }),
        took: looked,
        ignored: went,
        away: brought,
        show:
          !shown &&
          button(
            `I press ${pad.says(word)}`,
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

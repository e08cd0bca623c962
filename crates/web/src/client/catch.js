// A catch: the animal asked without a button; answer by showing the word.

import { care } from "./care.js";
import { button, el, slots, tell } from "./dom.js";
import { restUntil, urges } from "./rest.js";
import { givePanel, padState as showState, thenPanel } from "./showing.js";
import { isA } from "./sitting.js";
import { say } from "./say.js";

/** @import { Event, Pad } from "../../client-checks/client" */
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
  if (press?.body.by === "person") return showState(pad, word);
  if (owed(pad, word)) return { name: "give", does: say("client-board-given"), count: "" };
  return { off: Boolean(pad.view.stop), does: say("client-board-asked-for", { name: pad.now.name }) };
};

/**
 * The last thing asked for without a button, while it is open: it is over once the word was given.
 * @param {Pad} pad
 */
export const openCatch = (pad) => {
  const asked = pad.view.stand
    .filter(isA("catch"))
    .filter((e) => Date.now() - Date.parse(e.happened_at) < OPEN_MS)
    .at(-1);
  /** @param {Event} e */
  const answers = (e) => asked && Date.parse(e.happened_at) >= Date.parse(asked.happened_at);
  const given = pad.view.stand.filter(isA("delivery")).some((e) => e.body.word === asked?.body.word && answers(e));
  return given ? undefined : asked;
};

/**
 * Whether it is answered by showing the word. After strong signs what it asked for is given, and no button is shown for it.
 * @param {Pad} pad
 */
const shows = (pad) => !restUntil(pad) && !pad.view.stop;

/**
 * What waits to be given without being shown: a press of the word, else what was asked for; undefined where nothing of it does.
 * @param {Pad} pad
 * @param {string} word
 */
const owed = (pad, word) => {
  const asked = openCatch(pad);
  if (asked?.body.word !== word || asked.body.shown || shows(pad) || pad.rewardOf(word)?.never) return undefined;
  return pad.view.pending[word] ?? asked;
};

/**
 * It asked for this; or, once shown, it was given.
 * @param {Pad} pad
 * @param {string} word
 */
export function tap(pad, word) {
  const press = pad.view.pending[word];
  if (press?.body.by === "person") return pad.deliver(press);
  const waits = owed(pad, word);
  if (waits) return pad.deliver(waits);
  return pad.note([{ kind: "catch", word, shown: false, ...pad.in() }], { hold: HOLD_S, sticky: true });
}

/** @param {Pad} pad */
export function panel(pad) {
  const notGiven = pad.view.session ? undefined : givePanel(pad);
  const asked = openCatch(pad);
  const shown = asked?.body.shown;
  if (!asked || (shown && !pad.view.pending[asked.body.word])) {
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
  const { word, how } = asked.body;
  const waits = shown ? pad.view.pending[word] : owed(pad, word);
  const show = !shown && shows(pad);
  const now = urges(pad, asked);
  const [looked, went, brought, sound, touched] = Object.entries(WAYS).map(([id, w]) =>
    button(
      say(/** @type {keyof Messages} */ (`client-board-how-${id}`)),
      "catch-how",
      () => pad.amend(asked, { how: w }),
      { "aria-pressed": String(how === w) },
    ),
  );
  return {
    key: `catch-${asked.id}-${how}-${show}-${waits?.id}-${now}`,
    build: () => [
      tell(
        el(
          "p",
          {},
          say(show ? "client-board-catch-show" : now ? "client-board-catch-give" : "client-board-give-calmly", {
            name: pad.now.name,
            word: pad.says(word),
          }),
        ),
      ),
      care(pad, pad.rewardOf(word)),
      slots({
        give:
          waits &&
          button(say("client-board-given"), "given", () => pad.deliver(waits), { class: now ? "primary" : "" }),
        took: looked,
        ignored: went,
        away: brought,
        show:
          show &&
          button(
            say("client-board-i-press-word", { word: pad.says(word) }),
            "catch-show",
            async () => {
              await pad.press(word, "person");
              await pad.amend(asked, { shown: true });
            },
            { class: "primary" },
          ),
        no: sound,
        other: touched,
      }),
    ],
  };
}

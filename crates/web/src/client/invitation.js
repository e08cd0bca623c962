// An invitation: something is offered, then a wait, then the person shows it and gives it. Not pressing is no mistake.
// What to offer is drawn, in rounds; a person may choose it too, which proves nothing.

import { care } from "./care.js";
import * as day from "./day.js";
import { button, el, slots, tell, text } from "./dom.js";
import { isDue, readyPanel } from "./due.js";
import { CLEAR, done, drop, event, given, result, round, set, since, state, tenths, took } from "./inviting.js";
import { KINDS, waits, ways } from "./offering.js";
import * as rounds from "./round.js";
import { givePanel, padState as showState } from "./showing.js";
import { restUntil, urges } from "./rest.js";
import { resting } from "./resting.js";
import { number, say } from "./say.js";
import { atEase } from "./starting.js";

/** @import { Going, InvitationMemo, OpenRound, Pad, Panel, Way, WordNow } from "../../client-checks/client" */

/** @type {(string | undefined)[]} */
const STEPS = ["waiting", "late", "after", "shown", "left"];
/**
 * @param {Pad} pad
 * @param {InvitationMemo} s
 */
const going = (pad, s) => s.step === "waiting" || s.step === "late" || (STEPS.includes(s.step) && Boolean(event(pad)));

/**
 * Whether the person now shows this word: on the pad as everywhere, or by the button below it. After strong signs nothing is shown.
 * @param {Pad} pad
 * @param {InvitationMemo} s
 * @param {string} word
 */
const isShown = (pad, s, word) => !s.press && word === s.word && !restUntil(pad);

/**
 * Whether there is nothing to offer: the mat stays, to answer what is pressed.
 * @param {Pad} pad
 * @param {InvitationMemo} s
 */
const nothing = (pad, s) => {
  if (going(pad, s) || s.myself || rounds.canDraw(pad)) return false;
  return restUntil(pad) !== undefined || (!s.back && !round(pad));
};

/** @param {Pad} pad */
export const padsHidden = (pad) => {
  const s = state(pad);
  return !going(pad, s) && !nothing(pad, s) && (!s.myself || Boolean(round(pad)));
};

/**
 * @param {Pad} pad
 * @param {string} word
 */
export function padState(pad, word) {
  const s = state(pad);
  if (s.step === "waiting") return { does: say("client-board-it-pressed", { name: pad.now.name }), count: "" };
  if (s.step === "after") {
    if (pad.view.pending[word] || isShown(pad, s, word)) return showState(pad, word);
    return { off: true, does: "" };
  }
  if (going(pad, s)) return { off: true, does: "" };
  if (nothing(pad, s)) return { name: "aside", ...day.padState(pad, word) };
  if (word === s.word) return { name: "chosen", does: say("client-board-offered-this") };
  if (word === s.other && s.way === "ask_between_two") return { name: "chosen", does: say("client-board-or-this") };
  // A tap still chooses; nothing asks for it.
  return { does: restUntil(pad) ? "" : say("client-board-offer-this") };
}

/**
 * @param {Pad} pad
 * @param {string} word
 */
export function tap(pad, word) {
  const s = state(pad);
  if (s.step === "waiting") {
    if (since(pad) <= (s.wait ?? pad.now.wait_s))
      return result(pad, { outcome: "pressed", word, after_s: tenths(since(pad)) });
    return set(pad, { step: "late", late: word, tappedAt: Date.now() });
  }
  if (s.step === "after") {
    const press = pad.view.pending[word];
    if (press) return given(pad, press);
    return isShown(pad, s, word) && Object.keys(pad.view.pending).length === 0 ? pad.press(word, "person") : undefined;
  }
  if (going(pad, s)) return undefined;
  if (nothing(pad, s)) return day.tap(pad, word);
  if (s.way === "ask_between_two" && s.word && s.word !== word) return set(pad, { other: word });
  return set(pad, { word, other: undefined });
}

/** @param {Pad} pad */
export function panel(pad) {
  const s = state(pad);
  const build = s.step && { waiting, late, after, shown, left }[s.step];
  if (build && going(pad, s)) return build(pad, /** @type {Going} */ (s));
  const answers = nothing(pad, s) ? day.asks(pad) : undefined;
  if (answers) return answers;
  // What was pressed and not given stands before the next offer, too, once a session is over.
  const notGiven = pad.view.session ? undefined : givePanel(pad);
  if (notGiven) return notGiven;
  const open = round(pad);
  if (open)
    return rounds.call(pad, open, {
      offered: () => offered(pad, open),
      skip: () => drop(pad, { round: open.round, number: open.next }),
    });
  const { word } = s;
  if (s.back && word && isDue(pad, word)) {
    const asked = { way: drawnWay(s), wait: s.wait ?? pad.now.wait_s };
    return readyPanel(pad, { ...s, word }, asked, () =>
      set(pad, { ...CLEAR, ...asked, step: "waiting", at: Date.now() }),
    );
  }
  if (s.myself) return setUp(pad, s);
  const options = { way: drawnWay(s), wait: s.wait ?? pad.now.wait_s };
  return rounds.setUp(pad, options, [ways(pad, options.way, KINDS.slice(0, 2)), waits(pad, options.wait)], () =>
    set(pad, { myself: true }),
  );
}

/**
 * How a drawn word is offered: never between two, since one alone is drawn.
 * @param {InvitationMemo} s
 * @returns {Way}
 */
const drawnWay = (s) => (s.way === "ask_and_point" ? s.way : "offer_in_view");

/**
 * A call was offered: the wait begins.
 * @param {Pad} pad
 * @param {OpenRound} open
 */
const offered = (pad, open) => {
  const s = state(pad);
  const asked = { way: drawnWay(s), wait: s.wait ?? pad.now.wait_s };
  return set(pad, {
    ...CLEAR,
    ...asked,
    step: "waiting",
    at: Date.now(),
    word: open.word,
    other: undefined,
    call: { round: open.round, number: open.next },
  });
};

/**
 * @param {Pad} pad
 * @param {InvitationMemo} s
 */
function setUp(pad, s) {
  const way = s.way ?? "offer_in_view";
  const wait = s.wait ?? pad.now.wait_s;
  const rest = restUntil(pad);
  const ready = s.word && pad.word(s.word) && (way !== "ask_between_two" || (s.other && s.other !== s.word));
  const offer = () =>
    button(
      ready
        ? way === "ask_between_two"
          ? say("client-board-offer-two", { word: pad.says(s.word), other: pad.says(s.other) })
          : say("client-board-offer-one", { word: pad.says(s.word) })
        : say(way === "ask_between_two" ? "client-board-choose-two" : "client-board-choose-one"),
      "offer",
      () => atEase(pad, () => set(pad, { ...CLEAR, step: "waiting", at: Date.now(), way, wait }), "offer-anyway"),
      { class: rest ? "" : "primary tall", disabled: !ready },
    );
  const instead = () =>
    button(say("client-board-round-instead"), "round-instead", () =>
      set(pad, { myself: false, word: undefined, other: undefined }),
    );
  return {
    key: `setup-${rest}-${pad.view.stop}-${way}-${wait}-${s.word}-${s.other}-${pad.view.session}-${pad.view.joined}`,
    build: () =>
      [
        resting(pad),
        ways(pad, way, KINDS),
        waits(pad, wait),
        pad.view.session &&
          !pad.view.joined &&
          el("p", { class: "quiet" }, say("client-board-only-there", { name: pad.now.name })),
        // In a session there is room for it where the session is summed up.
        !pad.view.session && el("p", { class: "quiet" }, say("client-board-own-choice")),
        // A wait comes after showing: whoever goes before Today is told what Today says.
        ...pad.words
          .filter((w) => [s.word, s.other].includes(w.id) && ["prepare", "show"].includes(w.stage))
          .map((w) =>
            el("p", { class: "caution", "data-test": "not-yet" }, say("client-board-not-yet", { word: w.says })),
          ),
        el("div", { class: "row go" }, offer(), instead()),
      ].filter(Boolean),
  };
}

/**
 * @param {Pad} pad
 * @param {Going} s
 */
function waiting(pad, s) {
  const within = () => (since(pad, s.at) <= s.wait ? { after_s: tenths(since(pad, s.at)) } : {});
  const calls = rounds.known(pad.now, pad.memo)?.calls ?? "";
  const nothing = button(
    say("client-board-nothing-came"),
    "nothing",
    () => result(pad, { outcome: "nothing_by_wait" }),
    { class: "primary later" },
  );
  return {
    key: `waiting-${s.at}-${restUntil(pad)}-${pad.view.stop}`,
    build: () => [
      tell(
        resting(pad),
        el(
          "p",
          { class: "count", "aria-hidden": "true" },
          el("span", { class: "count-down", "data-test": "count-down" }),
          el("progress", { max: s.wait, value: 0 }),
        ),
        s.call &&
          el(
            "p",
            { class: "quiet num" },
            say("client-board-call-of", { n: s.call.number, all: calls, word: pad.says(s.word) }),
          ),
        el("p", { class: "asks" }),
      ),
      care(pad, pad.rewardOf(s.word)),
      slots({
        give: nothing,
        took: button(say("client-board-own-way"), "without-button", () =>
          result(pad, { outcome: "without_button", ...within() }),
        ),
        away: button(say("client-board-left-offer"), "invitation-left", () =>
          result(pad, { outcome: "left", ...within() }),
        ),
        more: button(say("client-board-cancel-one"), "invitation-drop", () => drop(pad, s.call)),
      }),
    ],
    // The end of the wait is said once, and its answer appears where room was kept for it.
    tick: (/** @type {HTMLElement} */ node) => {
      const left = s.wait - since(pad, s.at);
      text(node.querySelector(".count-down"), say("client-board-seconds", { s: number(Math.max(0, left), 1) }));
      const bar = node.querySelector("progress");
      if (bar) bar.value = Math.min(s.wait, since(pad, s.at));
      node.querySelector(".later")?.classList.toggle("now", left <= 0);
      text(
        node.querySelector(".asks"),
        left <= 0
          ? say(restUntil(pad) ? "client-board-wait-over-rest" : "client-board-wait-over")
          : say("client-board-wait-still", { n: s.wait, name: pad.now.name }),
      );
    },
  };
}

/**
 * @param {Pad} pad
 * @param {Going} s
 */
function late(pad, s) {
  return {
    key: `late-${s.tappedAt}`,
    build: () => [
      tell(el("p", {}, say("client-board-late-which", { name: pad.now.name, word: pad.says(s.late), n: s.wait }))),
      care(pad, undefined),
      slots({
        took: button(say("client-board-in-time"), "late-in-time", () =>
          result(pad, { outcome: "pressed", word: s.late ?? s.word, after_s: s.wait }, s.tappedAt),
        ),
        ignored: button(say("client-board-after-wait"), "late-after", () =>
          result(pad, { outcome: "nothing_by_wait" }, s.tappedAt),
        ),
      }),
    ],
  };
}

/**
 * @param {Pad} pad
 * @param {Going} s
 */
function after(pad, s) {
  const press = Object.values(pad.view.pending).find((e) => e.body.word === (s.press ?? s.word));
  const { name } = pad.now;
  const rests = !press && restUntil(pad) !== undefined;
  const now = !press || urges(pad, press);
  const asks = !now
    ? say("client-board-give-calmly", { name, word: pad.says(press.body.word) })
    : s.press
      ? say("client-board-give-now-pressed", { name, word: pad.says(s.press) })
      : rests
        ? say("client-board-stop-here", { name })
        : say(press ? "client-board-give-now" : "client-board-show-now");
  if (rests)
    return {
      key: `after-${s.id}-rests`,
      build: () => [
        tell(el("p", { class: "caution rests" }, asks)),
        care(pad, undefined),
        slots({ more: button(say("client-board-done"), "invitation-done", () => done(pad)) }),
      ],
    };
  return {
    key: `after-${s.id}-${press?.id}-${now}`,
    build: () => [
      tell(el("p", {}, asks)),
      care(pad, pad.rewardOf(s.press ?? s.word)),
      slots({
        give:
          press &&
          button(say("client-board-given"), "invitation-given", () => given(pad, press), {
            class: now ? "primary" : "",
          }),
        show:
          !press &&
          button(
            say("client-board-i-press-word", { word: pad.says(s.word) }),
            "invitation-show",
            () => pad.press(s.word, "person"),
            { class: "primary" },
          ),
        more: button(say("client-board-could-not-give"), "invitation-not-given", () => done(pad)),
      }),
    ],
  };
}

/** @param {Pad} pad */
function shown(pad) {
  return {
    key: `took-${state(pad).id}`,
    build: () => [
      tell(
        el("p", {}, say("client-board-did-take", { name: pad.now.name })),
        el("p", { class: "quiet" }, say("client-board-counts-only", { name: pad.now.name })),
      ),
      care(pad, undefined),
      slots({
        took: button(say("client-board-took"), "took-yes", () => took(pad, true), { class: "primary" }),
        ignored: button(say("client-board-did-not-take"), "took-no", () => took(pad, false)),
        more: button(say("client-board-did-not-see"), "took-unseen", () => took(pad, undefined)),
      }),
    ],
  };
}

/** @param {Pad} pad */
function left(pad) {
  const s = state(pad);
  const stopRound = async () => {
    const open = round(pad);
    await done(pad);
    if (open) await rounds.stop(pad, open); // it may have grown too old meanwhile
  };
  const goesOn = Boolean(s.call && round(pad));
  return {
    key: `left-${s.id}`,
    build: () => [
      tell(
        el(
          "p",
          { class: "stop" },
          el("strong", {}, say("client-board-stop-left", { name: pad.now.name })),
          ` ${say("client-board-stop-left-do", { name: pad.now.name })}`,
        ),
      ),
      care(pad, undefined),
      slots({
        show: goesOn && button(say("client-board-stop-round"), "round-stop", stopRound, { class: "primary" }),
        more: button(
          goesOn ? say("client-board-came-back", { name: pad.now.name }) : say("client-board-done"),
          "invitation-done",
          () => done(pad),
        ),
      }),
    ],
  };
}

/**
 * The parts of every panel an invitation can ask, of a word and each at its longest: to be measured, never shown.
 * @param {Pad} pad
 * @param {WordNow} long
 * @returns {ReturnType<Panel["build"]>[]}
 */
export function steps(pad, long) {
  const s = {
    word: long.id,
    wait: Math.max(pad.now.wait_s, state(pad).wait ?? 0),
    at: 0,
    call: { round: "", number: 1 },
  };
  const [over, still] = [Date.now() - 2 * s.wait * 1000, Date.now()].map((at) => {
    const asks = waiting(pad, { ...s, at });
    const parts = asks.build();
    const box = el("div", {}, ...parts);
    asks.tick(box);
    return [...box.childNodes];
  });
  const others = [
    late(pad, { ...s, late: long.id }),
    after(pad, s),
    after(pad, { ...s, press: long.id }),
    shown(pad),
    left(pad),
  ];
  return [over, still, ...others.map((asks) => asks.build())];
}

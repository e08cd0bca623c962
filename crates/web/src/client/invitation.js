// An invitation: something is offered, then a wait, then the person shows it and gives it. Not pressing is no mistake.
// What to offer is drawn, in rounds; a person may choose it too, which proves nothing.

import { button, el, text } from "./dom.js";
import { release } from "./outbox.js";
import * as rounds from "./round.js";
import { padState as showState } from "./showing.js";

const HOLD_S = 180;
const KINDS = [
  ["offer_in_view", "It is in view"],
  ["ask_and_point", "Ask and point"],
  ["ask_between_two", "This or that?"],
];
const WAITS = [3, 5, 8, 10, 15, 20, 30];

const CLEAR = { step: undefined, at: undefined, id: undefined, press: undefined, result: undefined, tappedAt: undefined, call: undefined };

const state = (pad) => pad.memo.invitation ?? {};
const set = (pad, change) => pad.setMemo({ invitation: { ...state(pad), ...change } });
/** Kind, wait and word stay chosen for the next one; what was held open for the answer may leave now. */
const done = async (pad) => {
  const { id } = state(pad);
  if (id) await release(id);
  return set(pad, CLEAR);
};
/** The open round, unless an invitation is going on. */
const round = (pad) => rounds.openRound(pad.now, pad.memo, Date.now());
/** The memo of a round once a call of it is over. */
const passed = (pad, call) => {
  const known = rounds.known(pad.now, pad.memo);
  return call && known?.round === call.round ? { round: rounds.past(known, call.number) } : {};
};
/** Not offered after all: in a round its outcome stays unknown, and the next word is drawn. */
const drop = (pad, call) => pad.setMemo({ ...passed(pad, call), invitation: { ...state(pad), ...CLEAR } });
const since = (pad) => (Date.now() - state(pad).at) / 1000;
const tenths = (s) => Math.max(0, Math.round(s * 10) / 10);

const STEPS = ["waiting", "late", "after", "shown", "left"];
const going = (pad, s) => ["waiting", "late"].includes(s.step) || (STEPS.includes(s.step) && Boolean(event(pad)));

export const padsHidden = (pad) => {
  const s = state(pad);
  return ["late", "shown"].includes(s.step) || (!going(pad, s) && (!s.myself || Boolean(round(pad))));
};

export function padState(pad, word) {
  const s = state(pad);
  if (s.step === "waiting") return { does: "It pressed", count: "" };
  if (s.step === "after") {
    if (pad.view.pending[word]) return showState(pad, word);
    return { off: true, does: "" };
  }
  if (word === s.word) return { name: "chosen", does: "Offered ✓" };
  if (word === s.other && s.way === "ask_between_two") return { name: "chosen", does: "Or this ✓" };
  return { does: "Offer this" };
}

export function tap(pad, word) {
  const s = state(pad);
  if (s.step === "waiting") {
    if (since(pad) <= s.wait) return result(pad, { outcome: "pressed", word, after_s: tenths(since(pad)) });
    return set(pad, { step: "late", late: word, tappedAt: Date.now() });
  }
  if (s.step === "after") {
    const press = pad.view.pending[word];
    return press && given(pad, press);
  }
  if (s.way === "ask_between_two" && s.word && s.word !== word) return set(pad, { other: word });
  return set(pad, { word, other: undefined });
}

/** Notes the result. A press is noted as a press as well, at the moment of the tap. */
async function result(pad, outcome, pressedAt = Date.now()) {
  const s = state(pad);
  // A session counts only once the animal has joined it.
  const where = pad.view.session && pad.view.joined ? { session: pad.view.session } : {};
  const invitation = pad.event(
    {
      kind: "invitation",
      word: s.word,
      ...(s.way === "ask_between_two" ? { other: s.other } : {}),
      ...(s.call ? { call: s.call } : {}),
      way: s.way ?? "offer_in_view",
      wait_s: s.wait,
      result: outcome,
      shown: false,
      ...where,
    },
    s.at,
  );
  const pressed = outcome.outcome === "pressed" ? outcome.word : s.late;
  const events = pressed
    ? [pad.event({ kind: "press", word: pressed, by: "animal", certainty: 1, accident: "unsure", ...where }, pressedAt)]
    : [];
  const step = outcome.outcome === "left" ? "left" : "after";
  pad.memo = { ...pad.memo, ...passed(pad, s.call), invitation: { ...s, step, id: invitation.id, press: pressed, result: outcome.outcome, late: undefined } };
  await pad.note([...events, invitation], { hold: HOLD_S, sticky: true, memo: [`pad-${pad.now.animal}`, pad.memo] });
}

const event = (pad) => pad.view.stand.find((e) => e.id === state(pad).id);

async function given(pad, press) {
  const delivery = await pad.deliver(press);
  const own = event(pad);
  if (own && press.body.by === "person") await pad.amend(own, { shown: true });
  await set(pad, { step: "shown", delivery: delivery.id });
}

/** Whether the thing was wanted just then: without that a missing press says nothing. */
async function took(pad, yes) {
  const s = state(pad);
  const own = event(pad);
  const delivery = pad.view.stand.find((e) => e.id === s.delivery);
  if (yes !== undefined) {
    if (delivery) await pad.amend(delivery, { then: yes ? "took" : "ignored" });
    if (own && (s.press === undefined || s.press === own.body.word)) await pad.amend(own, { took: yes });
  }
  await done(pad);
}

export function panel(pad) {
  const s = state(pad);
  const build = { waiting, late, after, shown, left }[s.step];
  if (build && going(pad, s)) return build(pad, s);
  const open = round(pad);
  if (open) return rounds.call(pad, open, { offered: () => offered(pad, open), skip: () => drop(pad, { round: open.round, number: open.next }) });
  if (s.myself) return setUp(pad, s);
  const options = { way: s.way === "ask_and_point" ? s.way : "offer_in_view", wait: s.wait ?? pad.now.wait_s };
  return rounds.setUp(pad, options, [ways(pad, options.way, KINDS.slice(0, 2)), waits(pad, options.wait)], () => set(pad, { myself: true }));
}

/** A call was offered: the wait begins. */
const offered = (pad, open) => {
  const { way, wait } = state(pad);
  const asked = { way: way === "ask_and_point" ? way : "offer_in_view", wait: wait ?? pad.now.wait_s };
  return set(pad, { ...CLEAR, ...asked, step: "waiting", at: Date.now(), word: open.word, other: undefined, call: { round: open.round, number: open.next } });
};

const ways = (pad, way, kinds) =>
  el("div", { class: kinds.length === 2 ? "row even" : "then three" }, ...kinds.map(([k, t]) => button(t, `way-${k}`, () => set(pad, { way: k }), { "aria-pressed": String(way === k) })));

const waits = (pad, wait) =>
  el(
    "label",
    { class: "inline" },
    "Wait ",
    el(
      "select",
      { "data-test": "wait", onchange: (e) => set(pad, { wait: Number(e.target.value) }) },
      ...WAITS.map((w) => el("option", { value: String(w), selected: w === wait }, `${w} seconds${w === pad.now.wait_s ? " (usual)" : ""}`)),
    ),
  );

function setUp(pad, s) {
  const way = s.way ?? "offer_in_view";
  const wait = s.wait ?? pad.now.wait_s;
  const ready = s.word && pad.word(s.word) && (way !== "ask_between_two" || (s.other && s.other !== s.word));
  return {
    key: `setup-${way}-${wait}-${s.word}-${s.other}-${pad.view.session}-${pad.view.joined}`,
    build: () => [
      pad.now.rest && el("p", { class: "caution" }, el("strong", {}, "Rest today. "), "Strong signs were seen; do not invite today."),
      ways(pad, way, KINDS),
      waits(pad, wait),
      pad.view.session && !pad.view.joined && el("p", { class: "quiet" }, "It has not joined this session. Offer only to an animal that is there."),
      button(
        ready ? `Offered ${pad.says(s.word)}${way === "ask_between_two" ? ` or ${pad.says(s.other)}` : ""}: start the wait` : way === "ask_between_two" ? "Choose two words below" : "Choose a word below",
        "offer",
        () => set(pad, { ...CLEAR, step: "waiting", at: Date.now(), way, wait }),
        { class: "primary wide tall", disabled: !ready },
      ),
      el("p", { class: "quiet" }, "Your own choice: kept as an everyday record. It may suggest something; it proves nothing."),
      button("Draw a round instead", "round-instead", () => set(pad, { myself: false, word: undefined, other: undefined }), { class: "wide" }),
    ].filter(Boolean),
  };
}

function waiting(pad, s) {
  const over = since(pad) > s.wait;
  return {
    key: `waiting-${s.at}-${over}`,
    build: () => [
      s.call && el("p", { class: "quiet num" }, `${s.call.number} of ${rounds.known(pad.now, pad.memo)?.calls ?? ""} · `, el("strong", {}, pad.says(s.word))),
      el("p", { class: "count-down", role: "timer", "data-test": "count-down" }),
      el("progress", { max: s.wait, value: 0, "aria-label": "Wait" }),
      el("p", {}, over ? "The wait is over. That is no mistake: show it yourself now." : "Keep still and say nothing more. Tap the word it presses."),
      el(
        "div",
        { class: `then ${over ? "four" : "three"}` },
        over && button("Nothing came", "nothing", () => result(pad, { outcome: "nothing_by_wait" }), { class: "primary" }),
        button("Answered without a button", "without-button", () => result(pad, { outcome: "without_button", ...(since(pad) <= s.wait ? { after_s: tenths(since(pad)) } : {}) })),
        button("Left", "invitation-left", () => result(pad, { outcome: "left", ...(since(pad) <= s.wait ? { after_s: tenths(since(pad)) } : {}) })),
        button("Not offered after all", "invitation-drop", () => drop(pad, s.call)),
      ),
    ].filter(Boolean),
    tick: (node) => {
      const left = s.wait - since(pad);
      text(node.querySelector(".count-down"), left > 0 ? `${left.toFixed(1)} s` : "0 s");
      const bar = node.querySelector("progress");
      if (bar) bar.value = Math.min(s.wait, since(pad));
    },
  };
}

function late(pad, s) {
  return {
    key: `late-${s.tappedAt}`,
    build: () => [
      el("p", {}, "It pressed ", el("strong", {}, pad.says(s.late)), `. Before the ${s.wait} seconds were over, or after?`),
      el(
        "div",
        { class: "row even" },
        button("Just in time", "late-in-time", () => result(pad, { outcome: "pressed", word: s.late, after_s: s.wait }, s.tappedAt)),
        button("After the wait", "late-after", () => result(pad, { outcome: "nothing_by_wait" }, s.tappedAt)),
      ),
    ],
  };
}

function after(pad, s) {
  const press = Object.values(pad.view.pending).find((e) => e.body.word === (s.press ?? s.word));
  const own = s.press ? `It pressed ${pad.says(s.press)}. Give it now, and tap Given.` : undefined;
  return {
    key: `after-${s.id}-${press?.id}`,
    build: () => [
      el("p", {}, own ?? (press ? "Give it now, and tap Given." : "Show it yourself and give it: press the button, say the word.")),
      el(
        "div",
        { class: "row even" },
        press
          ? button("Given", "invitation-given", () => given(pad, press), { class: "primary tall" })
          : button(`I press ${pad.says(s.word)}`, "invitation-show", () => pad.press(s.word, "person"), { class: "primary tall" }),
        button("It could not be given", "invitation-not-given", () => done(pad)),
      ),
    ],
  };
}

function shown(pad) {
  return {
    key: `took-${state(pad).id}`,
    build: () => [
      el("p", {}, `Did ${pad.now.name} take it?`),
      el("p", { class: "quiet" }, "Only then did it want it, and only then does this invitation say anything."),
      el(
        "div",
        { class: "row even" },
        button("Took it", "took-yes", () => took(pad, true), { class: "primary tall" }),
        button("Did not take it", "took-no", () => took(pad, false), { class: "tall" }),
        button("Did not see", "took-unseen", () => took(pad, undefined)),
      ),
    ],
  };
}

function left(pad) {
  const s = state(pad);
  return {
    key: `left-${s.id}`,
    build: () => [
      el("p", { class: "stop" }, el("strong", {}, "It left. "), "Let it go; do not lure or call it back. Its no is an answer."),
      s.call && round(pad)
        ? el(
            "div",
            { class: "row even" },
            button("Stop the round", "round-stop", async () => { const open = round(pad); await done(pad); await rounds.stop(pad, open); }, { class: "primary" }),
            button("It came back by itself", "invitation-done", () => done(pad)),
          )
        : button("Done", "invitation-done", () => done(pad), { class: "wide" }),
    ],
  };
}

// How far an invitation has got, and what is noted of it; the panels that ask are in invitation.js.

import { release } from "./outbox.js";
import { restUntil } from "./rest.js";
import * as rounds from "./round.js";
import { isA } from "./sitting.js";

/** @import { Going, InvitationMemo, InvitationResult, Memo, Pad, Told } from "../../client-checks/client" */

const HOLD_S = 180;

export const CLEAR = {
  step: undefined,
  at: undefined,
  id: undefined,
  press: undefined,
  result: undefined,
  tappedAt: undefined,
  late: undefined,
  call: undefined,
};

/** @param {Pad} pad */
export const state = (pad) => pad.memo.invitation ?? {};
/**
 * @param {Pad} pad
 * @param {InvitationMemo} change
 */
export const set = (pad, change) => pad.setMemo({ invitation: { ...state(pad), ...change } });
/**
 * The memo of one that is over: one that the plan opened leads back to showing, after others kind, wait and word stay chosen.
 * @param {Pad} pad
 * @returns {Pick<Memo, "mode" | "invitation">}
 */
export const toShowing = (pad) => {
  const s = { ...state(pad), ...CLEAR };
  const none = { ...s, back: undefined, myself: false, word: undefined, other: undefined };
  if (s.back) return { mode: "showing", invitation: none };
  // While it rests, a tap on the mat is a press to be answered, until somebody chooses again to offer by hand.
  return { invitation: restUntil(pad) ? none : s };
};
/**
 * What was held open for the answer may leave now.
 * @param {Pad} pad
 */
export const done = async (pad) => {
  const { id } = state(pad);
  if (id) await release(id);
  return pad.setMemo(toShowing(pad));
};
/**
 * The open round, unless an invitation is going on.
 * @param {Pad} pad
 */
export const round = (pad) => rounds.openRound(pad.now, pad.memo, Date.now());
/**
 * The memo of a round once a call of it is over.
 * @param {Pad} pad
 * @param {{ round: string, number: number } | undefined} call
 */
const passed = (pad, call) => {
  const known = rounds.known(pad.now, pad.memo);
  return call && known?.round === call.round ? { round: rounds.past(known, call.number) } : {};
};
/**
 * A session counts only once the animal has joined it.
 * @param {Pad} pad
 */
const where = (pad) => (pad.view.session && pad.view.joined ? { session: pad.view.session } : {});
/**
 * A press of the animal, at the moment of the tap.
 * @param {Pad} pad
 * @param {string} word
 * @param {number} [at]
 */
const pressOf = (pad, word, at) =>
  pad.event({ kind: "press", word, by: "animal", certainty: 1, accident: "unsure", ...where(pad) }, at);
/**
 * Not offered after all: in a round its outcome stays unknown, and the next word is drawn. A press after the wait is noted all the
 * same: only what it says of the offer is unknown.
 * @param {Pad} pad
 * @param {{ round: string, number: number } | undefined} call
 */
export async function drop(pad, call) {
  const { step, late, tappedAt } = state(pad);
  const change = { ...passed(pad, call), ...toShowing(pad) };
  if (step !== "late" || !late) return pad.setMemo(change);
  const press = pressOf(pad, late, tappedAt);
  pad.memo = { ...pad.memo, ...change };
  return pad.note([press], { memo: [`pad-${pad.now.animal}`, pad.memo] });
}
/**
 * Seconds since an offer was made: the one that waits, unless another is named.
 * @param {Pad} pad
 * @param {number} [at]
 */
export const since = (pad, at = state(pad).at ?? Date.now()) => (Date.now() - at) / 1000;
/** @param {number} s */
export const tenths = (s) => Math.max(0, Math.round(s * 10) / 10);

/**
 * Notes the result. A press is noted as a press as well, at the moment of the tap.
 * @param {Pad} pad
 * @param {InvitationResult} outcome
 * @param {number} [pressedAt]
 */
export async function result(pad, outcome, pressedAt = Date.now()) {
  const s = /** @type {Going} */ (state(pad));
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
      ...where(pad),
    },
    s.at,
  );
  const pressed = outcome.outcome === "pressed" ? outcome.word : s.late;
  const events = pressed ? [pressOf(pad, pressed, pressedAt)] : [];
  const step = outcome.outcome === "left" ? "left" : "after";
  pad.memo = {
    ...pad.memo,
    ...passed(pad, s.call),
    invitation: { ...s, step, id: invitation.id, press: pressed, result: outcome.outcome, late: undefined },
  };
  await pad.note([...events, invitation], { hold: HOLD_S, sticky: true, memo: [`pad-${pad.now.animal}`, pad.memo] });
}

/** @param {Pad} pad */
export const event = (pad) => pad.view.stand.filter(isA("invitation")).find((e) => e.id === state(pad).id);

/**
 * @param {Pad} pad
 * @param {Told<"press">} press
 */
export async function given(pad, press) {
  const delivery = await pad.deliver(press);
  const own = event(pad);
  if (own && press.body.by === "person") await pad.amend(own, { shown: true });
  await set(pad, { step: "shown", delivery: delivery.id });
}

/**
 * Whether the thing was wanted just then: without that a missing press says nothing.
 * @param {Pad} pad
 * @param {boolean | undefined} yes
 */
export async function took(pad, yes) {
  const s = state(pad);
  const own = event(pad);
  const delivery = pad.view.stand.find((e) => e.id === s.delivery);
  if (yes !== undefined) {
    if (delivery) await pad.amend(delivery, { then: yes ? "took" : "ignored" });
    if (own && (s.press === undefined || s.press === own.body.word)) await pad.amend(own, { took: yes });
  } else await pad.setMemo({ unseen: s.delivery }); // nor is it asked again while showing goes on
  await done(pad);
}

// Until when sessions rest after strong signs: the notebook's own rule (crates/advisor/src/rest.rs), kept here too, so that a
// growl counts also while nothing answers; tests/client/shared.test.mjs compares.

import { dayOf, dayStart } from "./homeday.js";
import { isA } from "./sitting.js";

/** @import { Pad } from "../../client-checks/client" */

export const LEAST_REST_MS = 43_200_000;
export const WEEK_DAYS = 7;

/**
 * When sessions may be held again, by the strong signs of the last seven days up to `now`; undefined where they may be held
 * now. Pure.
 * @param {number[]} strong
 * @param {string} zone
 * @param {number} now
 */
export function restsUntil(strong, zone, now) {
  const first = dayStart(dayOf(now, zone) - WEEK_DAYS + 1, zone);
  const seen = strong.filter((at) => at >= first && at <= now);
  if (seen.length === 0) return undefined;
  const last = Math.max(...seen);
  const days = [...new Set(seen.map((at) => dayOf(at, zone)))].sort((a, b) => b - a);
  const until = Math.max(
    dayStart(days[0] + 1, zone),
    last + LEAST_REST_MS,
    days.length > 1 ? dayStart(days[1] + WEEK_DAYS, zone) : 0,
  );
  return now < until ? until : undefined;
}

/**
 * Until when this animal rests, as the notebook said or by what was seen here since; undefined where it need not.
 * @param {Pick<Pad, "now" | "strong">} pad
 * @param {number} [now]
 */
export function restUntil(pad, now = Date.now()) {
  const told = pad.now.rest_until ? Date.parse(pad.now.rest_until) : 0;
  const until = Math.max(told, restsUntil(pad.strong, pad.now.zone, now) ?? 0);
  return now < until ? until : undefined;
}

/**
 * Strong signs among standing events, as moments.
 * @param {import("../../client-checks/client").Event[]} stand
 */
export const strongOf = (stand) =>
  stand
    .filter(isA("sign"))
    .filter((e) => e.body.level === "strong")
    .map((e) => Date.parse(e.happened_at));

// Until when sessions rest after strong signs: the notebook's own rule (crates/advisor/src/rest.rs), kept here too, so that a
// growl counts also while nothing answers; tests/client/shared.test.mjs compares.

import { dayOf, dayStart } from "./homeday.js";
import { isA } from "./sitting.js";

/** @import { Now, Pad } from "../../client-checks/client" */

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
  const { zone } = pad.now;
  // A sign dated ahead of this device's clock counts.
  const strong = pad.strong.map((at) => Math.min(at, now));
  const until = Math.max(stillTold(pad.now), restsUntil(strong, zone, now) ?? 0);
  return now < until ? until : undefined;
}

/**
 * What the notebook said, unless it follows from signs that are all told here: then it is worked out anew from those that stand, and
 * a sign that was taken back since holds nothing any more.
 * @param {Now} now
 */
function stillTold({ rest_until, all_signs, strong, today, zone, at }) {
  if (!rest_until) return 0;
  const told = Date.parse(rest_until);
  const known = all_signs ? [...strong.map((s) => Date.parse(s)), ...strongOf(today)] : [];
  return restsUntil(known, zone, Date.parse(at)) === told ? 0 : told;
}

/**
 * Whether what was pressed or asked for is to be given at once. Once the session stops, or a strong sign came since, nothing
 * hurries: it may still be given.
 * @param {Pick<Pad, "view" | "strong">} pad
 * @param {import("../../client-checks/client").Event} asked
 */
export const urges = (pad, asked) => !pad.view.stop && !pad.strong.some((at) => at >= Date.parse(asked.happened_at));

/**
 * Strong signs among standing events, as moments.
 * @param {import("../../client-checks/client").Event[]} stand
 */
export const strongOf = (stand) =>
  stand
    .filter(isA("sign"))
    .filter((e) => e.body.level === "strong")
    .map((e) => Date.parse(e.happened_at));

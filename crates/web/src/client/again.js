// A form for which one had to show once more who one is was not kept: back on its page, it stands there as it was sent, to be sent
// again. It stays in this tab, and is taken out as the page is opened, whether it is put back or not.

import { keep, putBack, taken, typedInto } from "./typed.js";

const KEY = `sayso-sent-${location.pathname}`;

addEventListener("formdata", (event) =>
  keep(
    KEY,
    typedInto((form) => form === event.target),
  ),
);

const kept = taken(KEY);
const from = document.referrer && new URL(document.referrer);
// From anywhere else the form was answered already.
const shown = from && from.origin === location.origin && from.pathname.startsWith("/sign-in");
if (shown && putBack(kept))
  for (const told of document.querySelectorAll("[data-again]")) told.removeAttribute("hidden");

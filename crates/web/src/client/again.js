// A form for which one had to show once more who one is was not kept: back on its page, it stands there as it was sent, to be sent
// again. It stays in this tab, and is taken out as the page is opened, whether it is put back or not.

import { putBack, typedInto } from "./typed.js";

const KEY = `sayso-sent-${location.pathname}`;

addEventListener("formdata", (event) => {
  const kept = typedInto((form) => form === event.target);
  if (kept.length > 0) sessionStorage.setItem(KEY, JSON.stringify(kept));
  else sessionStorage.removeItem(KEY);
});

const kept = sessionStorage.getItem(KEY);
sessionStorage.removeItem(KEY);
const from = document.referrer && new URL(document.referrer);
// From anywhere else the form was answered already.
const shown = from && from.origin === location.origin && from.pathname.startsWith("/sign-in");
if (kept && shown && putBack(JSON.parse(kept)))
  for (const told of document.querySelectorAll("[data-again]")) told.removeAttribute("hidden");

// What was typed on a card and not saved yet outlasts another form of the page: once that is sent, the page comes anew, and
// what was typed is put back. It stays in this tab, and is taken out as it is put back.

import { keep, putBack, taken, typedInto } from "./typed.js";

const KEY = `sayso-draft-${location.pathname}`;

// Told as a form is sent in earnest, after whatever may have held it back.
addEventListener("formdata", (event) =>
  keep(
    KEY,
    typedInto((form) => form !== event.target),
  ),
);

putBack(taken(KEY));

// What was typed on a card and not saved yet outlasts another form of the page: once that is sent, the page comes anew, and
// what was typed is put back. It stays in this tab, and is taken out as it is put back.

const KEY = `sayso-draft-${location.pathname}`;
const TYPED = "input:not([type=hidden], [type=file], [type=password]), select, textarea";

/** @typedef {HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement} Field */

/**
 * A form's fields that a person fills in.
 * @param {HTMLFormElement} form
 */
const fields = (form) => /** @type {Field[]} */ ([...form.querySelectorAll(TYPED)]);

/**
 * What is in a field; undefined where it is as the page came.
 * @param {Field} field
 */
function changed(field) {
  if (field instanceof HTMLSelectElement) {
    const came = [...field.options].find((o) => o.defaultSelected) ?? field.options[0];
    return field.value === came?.value ? undefined : field.value;
  }
  if (field instanceof HTMLInputElement && ["checkbox", "radio"].includes(field.type))
    return field.checked === field.defaultChecked ? undefined : field.checked;
  return field.value === field.defaultValue ? undefined : field.value;
}

/**
 * A form's name from one load of the page to the next: where it is sent.
 * @param {HTMLFormElement} form
 */
const sentTo = (form) => form.getAttribute("action") ?? "";

const forms = () => /** @type {HTMLFormElement[]} */ ([...document.querySelectorAll("main form[method=post]")]);

// Told as a form is sent in earnest, after whatever may have held it back.
addEventListener("formdata", (event) => {
  /** @type {[string, number, string | boolean][]} */
  const kept = [];
  for (const form of forms().filter((f) => f !== event.target))
    for (const [at, field] of fields(form).entries()) {
      const typed = changed(field);
      if (typed !== undefined) kept.push([sentTo(form), at, typed]);
    }
  if (kept.length > 0) sessionStorage.setItem(KEY, JSON.stringify(kept));
  else sessionStorage.removeItem(KEY);
});

/** Puts back what was kept. */
function restore() {
  const kept = sessionStorage.getItem(KEY);
  sessionStorage.removeItem(KEY);
  if (!kept) return;
  for (const [of, at, typed] of JSON.parse(kept)) {
    const form = forms().find((f) => sentTo(f) === of);
    const field = form && fields(form)[at];
    if (!field) continue;
    if (typeof typed === "boolean") /** @type {HTMLInputElement} */ (field).checked = typed;
    else field.value = typed;
    field.dispatchEvent(new Event("input", { bubbles: true }));
    field.dispatchEvent(new Event("change", { bubbles: true }));
  }
}

restore();

// What was typed into the forms of a page, taken up and put back: for a page that comes anew before it was kept.

const TYPED = "input:not([type=hidden], [type=file], [type=password]), select, textarea";

/** @typedef {HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement} Field */
/** @typedef {[string, number, string | boolean]} Kept Where the form is sent, the field's place in it, what was typed. */

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

/**
 * What was typed into those forms of the page that are chosen.
 * @param {(form: HTMLFormElement) => boolean} chosen
 */
export function typedInto(chosen) {
  /** @type {Kept[]} */
  const kept = [];
  for (const form of forms().filter(chosen))
    for (const [at, field] of fields(form).entries()) {
      const typed = changed(field);
      if (typed !== undefined) kept.push([sentTo(form), at, typed]);
    }
  return kept;
}

/**
 * Puts it back; whether there was anything to.
 * @param {Kept[]} kept
 */
export function putBack(kept) {
  let any = false;
  for (const [of, at, typed] of kept) {
    const form = forms().find((f) => sentTo(f) === of);
    const field = form && fields(form)[at];
    if (!field) continue;
    any = true;
    if (typeof typed === "boolean") /** @type {HTMLInputElement} */ (field).checked = typed;
    else field.value = typed;
    field.dispatchEvent(new Event("input", { bubbles: true }));
    field.dispatchEvent(new Event("change", { bubbles: true }));
  }
  return any;
}

/**
 * Keeps it in this tab under a name.
 * @param {string} key
 * @param {Kept[]} kept
 */
export function keep(key, kept) {
  if (kept.length > 0) sessionStorage.setItem(key, JSON.stringify(kept));
  else sessionStorage.removeItem(key);
}

/**
 * Takes it out; nothing where nothing was kept.
 * @param {string} key
 * @returns {Kept[]}
 */
export function taken(key) {
  const kept = sessionStorage.getItem(key);
  sessionStorage.removeItem(key);
  return kept ? JSON.parse(kept) : [];
}

// Fills an empty time zone field with the zone of this device, and says it where the field is folded away.
/** @type {HTMLInputElement | null} */
const field = document.querySelector("input[data-zone]");
const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
if (field && !field.value && zone) field.value = zone;
const said = document.querySelector("[data-zone-name]");
if (field && said) said.textContent = field.value;

// Fills an empty time zone field with the zone of this device.
/** @type {HTMLInputElement | null} */
const field = document.querySelector("input[data-zone]");
const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
if (field && !field.value && zone) field.value = zone;

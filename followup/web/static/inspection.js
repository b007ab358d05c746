// Quickens the inspection form; everything on it works without this file too.
// - Digits jump on: the next field is due as soon as no further digit could belong to the number.
// - Enter goes to the next field instead of sending the form.
// - "Not checked" is one press, with the reason that was chosen last.
// - "Same as left" fills in what is empty, to be seen before it is kept.
"use strict";

(function () {
  const form = document.querySelector("form.sheet");
  if (!form) return;

  const typed = () => Array.from(form.querySelectorAll("input:not([type=hidden]):not([type=checkbox]):not([type=radio])"))
    .filter((field) => field.offsetParent !== null);

  function next(field) {
    const fields = typed();
    const following = fields[fields.indexOf(field) + 1];
    if (following) { following.focus(); following.select(); }
  }

  // No number up to `most` begins with these digits and goes on.
  function isWhole(text, most, decimals) {
    if (decimals === 1) return /^\d+[.,]\d$/.test(text);
    return /^\d+$/.test(text) && Number(text) * 10 > most && text !== "0" || text === "0";
  }

  form.addEventListener("input", (event) => {
    const field = event.target;
    if (event.inputType && event.inputType.startsWith("delete")) return;
    if (field.selectionStart !== field.value.length) return;
    const { digits, most, decimals } = field.dataset;
    if (digits && /^\d+$/.test(field.value) && field.value.length === Number(digits)) next(field);
    if (most && isWhole(field.value, mostIn(field, Number(most)), decimalsIn(field, Number(decimals)))) next(field);
  });

  form.addEventListener("keydown", (event) => {
    if (event.key !== "Enter" || event.target.tagName !== "INPUT") return;
    event.preventDefault();
    next(event.target);
  });

  // The bounds are told in the first unit of a field; another one that was chosen changes them.
  const UNITS = { "32nds": [1, 0], mm: [1, 1], psi: [1, 0], kPa: [7, 0], bar: [0.07, 1], F: [1, 0], C: [1, 0] };
  function unitOf(field) {
    const unit = field.parentElement.querySelector("[data-unit-of]");
    return unit ? unit.textContent.trim() : "";
  }
  function mostIn(field, most) { const known = UNITS[unitOf(field)]; return known ? most * known[0] : most; }
  function decimalsIn(field, decimals) { const known = UNITS[unitOf(field)]; return known ? known[1] : decimals; }

  form.addEventListener("change", (event) => {
    const changed = event.target;
    form.querySelectorAll(`[data-unit-of="${CSS.escape(changed.name)}"]`).forEach((unit) => { unit.textContent = changed.value; });
    if (changed.matches(".not-checked select") && changed.value) reason = changed.value;
    if (changed.matches(".same input") && changed.checked) copyFromLeft(changed.closest(".station"));
  });

  // One press for "not checked".
  let reason = "no_time";
  form.querySelectorAll(".not-checked").forEach((place) => {
    const select = place.querySelector("select");
    const label = place.querySelector("label");
    const button = document.createElement("button");
    button.type = "button";
    button.className = "second small-button";
    button.textContent = "Not checked";
    button.setAttribute("aria-label", `Not checked: ${place.closest("fieldset").querySelector("legend").textContent.trim()}`);
    button.addEventListener("click", () => { select.value = select.value ? "" : reason; });
    label.classList.add("unseen");
    place.prepend(button);
  });

  function copyFromLeft(station) {
    const left = form.querySelector(`.station[data-station="${station.dataset.left}"]`);
    station.querySelectorAll(".item-row").forEach((row) => {
      const other = left && left.querySelector(`.item-row[data-item="${row.dataset.item}"]`);
      if (!other || isFilled(row)) return;
      const place = row.dataset.row, from = other.dataset.row;
      other.querySelectorAll("input, select").forEach((source) => {
        const name = source.name.replace(from, place);
        if (name.startsWith("topped.")) return;
        if (source.type === "radio") {
          const twin = Array.from(row.querySelectorAll("input[type=radio]")).find((one) => one.name === name && one.value === source.value);
          if (twin) twin.checked = source.checked;
        } else {
          const twin = Array.from(row.querySelectorAll("input, select")).find((one) => one.name === name);
          if (twin) twin.value = source.value;
        }
      });
    });
  }

  function isFilled(row) {
    return Array.from(row.querySelectorAll("input, select")).some((one) =>
      one.type === "checkbox" ? one.checked : one.type === "radio" ? one.checked && one.value : one.value);
  }

  // Lines for work and advice that are not needed yet stay folded.
  form.querySelectorAll(".line-row + .spare-line").forEach((line) => { line.hidden = true; });
  form.addEventListener("change", (event) => {
    const line = event.target.closest(".line-row");
    const after = line && line.nextElementSibling;
    if (after && after.matches(".spare-line[hidden]")) after.hidden = false;
  });

  // Lowest only is a habit: this browser keeps it.
  const lowest = form.querySelector("#field-lowest");
  try {
    if (localStorage.getItem("lowest only") === "yes") lowest.checked = true;
    lowest.addEventListener("change", () => localStorage.setItem("lowest only", lowest.checked ? "yes" : "no"));
  } catch (_) { /* a browser that keeps nothing */ }
})();

// Sorts tables by a column and switches layers of maps. Everything can be read without it.
"use strict";
for (const head of document.querySelectorAll("thead th")) {
  const button = document.createElement("button");
  button.type = "button";
  button.title = "Sort by this column";
  button.append(...head.childNodes);
  head.append(button);
  button.addEventListener("click", () => {
    const body = head.closest("table").tBodies[0], column = head.cellIndex;
    const direction = head.getAttribute("aria-sort") === "ascending" ? -1 : 1;
    const rows = [...body.rows].map((row, place) => ({ row, place, text: row.cells[column].textContent.trim() }));
    rows.sort((a, b) => compare(a.text, b.text) * direction || a.place - b.place);
    for (const other of head.parentNode.cells) other.removeAttribute("aria-sort");
    head.setAttribute("aria-sort", direction === 1 ? "ascending" : "descending");
    body.append(...rows.map(item => item.row));
  });
}

// Numbers by value, with the signs that stand before them; cells without a figure come first.
function compare(a, b) {
  const x = parseFloat(a.replace(/^[^0-9+.-]+/, "")), y = parseFloat(b.replace(/^[^0-9+.-]+/, ""));
  return Number.isNaN(x) || Number.isNaN(y) ? a.localeCompare(b, "en") : x - y;
}

const layers = [["Margins", "heat"], ["Hatching", "hatch"], ["Contour lines", "contour"], ["Routes", "route"], ["Labels", "label"], ["Devices", "device"]];
for (const figure of document.querySelectorAll("figure.map")) {
  if (figure.querySelector("g.heat") === null) continue;
  const choices = document.createElement("fieldset"), legend = document.createElement("legend");
  choices.className = "layers";
  legend.textContent = "Show:";
  choices.append(legend);
  for (const [words, name] of layers) {
    const label = document.createElement("label"), box = document.createElement("input");
    box.type = "checkbox";
    box.checked = true;
    box.addEventListener("change", () => {
      for (const group of figure.querySelectorAll("g." + name)) group.style.display = box.checked ? "" : "none";
    });
    label.append(box, " " + words);
    choices.append(label);
  }
  figure.prepend(choices);
}

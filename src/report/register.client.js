// Search and sort in the page of a register; without it the page shows everything, by tag.
const table = document.querySelector("#register");
const body = table.tBodies[0];
const rows = [...body.rows];
const texts = rows.map((row) => row.textContent.toLowerCase());
const search = document.querySelector("#search");
const state = document.querySelector("#state");
const count = document.querySelector("#shown");

function filter() {
  const words = search.value.toLowerCase().split(/\s+/u).filter(Boolean);
  let shown = 0;
  for (const [index, row] of rows.entries()) {
    const isShown =
      (state.value === "" || row.dataset.state === state.value) && words.every((word) => texts[index].includes(word));
    row.hidden = !isShown;
    if (isShown) shown += 1;
  }
  count.textContent = `${shown} of ${rows.length} shown`;
}

/** Numbers by size, texts by letters; what is not known comes last either way. */
function compare(one, other, direction) {
  if (one === other) return 0;
  if (one === "") return 1;
  if (other === "") return -1;
  const [first, second] = [Number(one), Number(other)];
  const order =
    Number.isNaN(first) || Number.isNaN(second) ? one.localeCompare(other, "en", { numeric: true }) : first - second;
  return direction * order;
}

function sortBy(column, direction) {
  const value = (row) => row.cells[column].dataset.value ?? row.cells[column].textContent.trim();
  const sorted = rows.map((row) => [value(row), row]).sort((one, other) => compare(one[0], other[0], direction));
  body.append(...sorted.map(([, row]) => row));
}

for (const [column, heading] of [...table.tHead.rows[0].cells].entries()) {
  const button = document.createElement("button");
  button.type = "button";
  button.append(...heading.childNodes);
  heading.append(button);
  button.addEventListener("click", () => {
    const isUp = heading.getAttribute("aria-sort") !== "ascending";
    for (const other of table.tHead.rows[0].cells) other.removeAttribute("aria-sort");
    heading.setAttribute("aria-sort", isUp ? "ascending" : "descending");
    sortBy(column, isUp ? 1 : -1);
  });
}
search.addEventListener("input", filter);
state.addEventListener("change", filter);
document.querySelector("#find").hidden = false;
filter();

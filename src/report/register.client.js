// Search, sort and turn over the rows of a register; without it a page shows the rows that stand in it, by tag.
const table = document.querySelector("#register");
const body = table.tBodies[0];
const headings = [...table.tHead.rows[0].cells];
const search = document.querySelector("#search");
const state = document.querySelector("#state");
const count = document.querySelector("#shown");
const turn = document.querySelector("#turn");
const packed = [...document.querySelectorAll("script[type='application/gzip']")];
/** Rows at once, of a page that holds the others as data. */
const most = packed.length === 0 ? Number.POSITIVE_INFINITY : body.rows.length;
const collator = new Intl.Collator("en", { numeric: true });
let all = packed.length === 0 ? [...body.rows].map(rowOfTable) : [];
let start = 0;

/** A row that stands in the page. */
function rowOfTable(row) {
  const keys = [...row.cells].map((cell) => cell.dataset.value ?? cell.textContent.trim());
  return { keys, text: row.textContent.toLowerCase(), state: row.dataset.state, draw: () => row };
}

const tags = /<[^>"]*(?:"[^"]*"[^>"]*)*>/gu;
const signs = { "&lt;": "<", "&quot;": '"', "&amp;": "&", "&#10;": "\n" };

/** A row that is data until it is drawn: its HTML, its state, what each column is sorted by; its text when it is sought. */
class RowOfData {
  #html;
  #text;
  constructor(html, [ofState, ...keys]) {
    this.#html = html;
    this.state = ofState;
    this.keys = keys;
  }
  read() {
    this.#text ??= this.#html
      .replace(tags, "")
      .replace(/&(?:lt|quot|amp|#10);/gu, (sign) => signs[sign])
      .toLowerCase();
  }
  get text() {
    this.read();
    return this.#text;
  }
  draw() {
    const template = document.createElement("template");
    template.innerHTML = this.#html;
    return template.content.firstChild;
  }
}

async function unpacked(element) {
  const signsOfBytes = atob(element.textContent);
  const bytes = new Uint8Array(signsOfBytes.length);
  for (let index = 0; index < bytes.length; index += 1) bytes[index] = signsOfBytes.charCodeAt(index);
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip"));
  const [keys, ...rows] = (await new Response(stream).text()).split("\n");
  return JSON.parse(keys).map((ofRow, index) => new RowOfData(rows[index], ofRow));
}

/** Their texts, while nobody waits for anything, where a browser says when: the first letter that is sought finds them. */
function readAhead(rows, start) {
  globalThis.requestIdleCallback?.((idle) => {
    let next = start;
    for (; next < rows.length && idle.timeRemaining() > 2; next += 1) rows[next].read();
    if (next < rows.length) readAhead(rows, next);
  });
}

function show() {
  const words = search.value.toLowerCase().split(/\s+/u).filter(Boolean);
  const isWanted = (row) =>
    (state.value === "" || row.state === state.value) && words.every((word) => row.text.includes(word));
  const found = all.filter(isWanted);
  const shown = found.slice(start, start + most);
  body.replaceChildren(...shown.map((row) => row.draw()));
  count.textContent = told(found.length, shown.length);
  count.dataset.sought = [search.value.trim(), state.value].filter(Boolean).join(", ");
  if (turn === null) return;
  turn.hidden = found.length <= most;
  turn.querySelector("#before").disabled = start === 0;
  turn.querySelector("#after").disabled = start + most >= found.length;
}

function told(found, shown) {
  if (packed.length === 0) return `${found} of ${all.length} shown`;
  const place = shown === 0 ? "none" : `${start + 1} to ${start + shown}`;
  return found === all.length ? `${place} of ${found} shown` : `${place} of ${found} found among ${all.length}`;
}

function showFromStart() {
  start = 0;
  show();
}

/** The rows that follow are read from their first on; the buttons stand below the last. */
function turnTo(row) {
  start = row;
  show();
  table.closest("section").scrollIntoView();
}

/** Numbers by size, texts by letters; what is not known comes last either way. */
function compare(one, other, direction) {
  if (one === other) return 0;
  if (one === "") return 1;
  if (other === "") return -1;
  const [first, second] = [Number(one), Number(other)];
  const areTexts = Number.isNaN(first) || Number.isNaN(second);
  return direction * (areTexts ? collator.compare(one, other) : first - second);
}

function beginSorting() {
  for (const [column, heading] of headings.entries()) {
    const button = document.createElement("button");
    button.type = "button";
    button.append(...heading.childNodes);
    heading.append(button);
    button.addEventListener("click", () => {
      const isUp = heading.getAttribute("aria-sort") !== "ascending";
      for (const other of headings) other.removeAttribute("aria-sort");
      heading.setAttribute("aria-sort", isUp ? "ascending" : "descending");
      all = all.toSorted((one, other) => compare(one.keys[column], other.keys[column], isUp ? 1 : -1));
      showFromStart();
    });
  }
}

function begin() {
  beginSorting();
  search.addEventListener("input", showFromStart);
  state.addEventListener("change", showFromStart);
  turn?.querySelector("#before").addEventListener("click", () => turnTo(Math.max(0, start - most)));
  turn?.querySelector("#after").addEventListener("click", () => turnTo(start + most));
  document.querySelector("#find").hidden = false;
  show();
}

if (packed.length === 0) begin();
else
  Promise.all(packed.map(unpacked)).then((parts) => {
    all = parts.flat();
    begin();
    readAhead(all, 0);
  });

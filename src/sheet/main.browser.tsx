import "./without-compiling.ts";

import { render } from "preact";
import { App } from "./app.tsx";
import { SheetStore } from "./kept-sheet.ts";
import type { SheetData } from "./sheet-data.ts";
import { loopOfSheet } from "./sheet-loop.ts";
import { momentOf, type World } from "./world.ts";

/** The browser around a sheet: its clock, its chance, its store. Nothing here reaches for a network. */
const world: World = {
  now: () => {
    const now = new Date();
    return momentOf(now, now.getTimezoneOffset());
  },
  chance: () => crypto.getRandomValues(new Uint16Array(1))[0]?.toString(16).padStart(4, "0") ?? "",
  openStore: () => SheetStore.open(indexedDB),
  leaveNote: (name, text) => localStorage.setItem(name, text),
  takeNote: (name) => {
    const text = localStorage.getItem(name) ?? undefined;
    localStorage.removeItem(name);
    return text;
  },
  onLeaving: (call) => {
    addEventListener("pagehide", call);
    return () => removeEventListener("pagehide", call);
  },
};

const data = JSON.parse(document.querySelector("#sheet-data")?.textContent ?? "") as SheetData;
const root = document.querySelector("#sheet");
if (root !== null) {
  root.textContent = "";
  render(<App data={data} loop={loopOfSheet(data)} world={world} />, root);
}

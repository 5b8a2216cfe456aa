import { access, constants } from "node:fs/promises";
import { delimiter, join } from "node:path";

/** Programs of the Chromium family by the names under which systems install them. */
const names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome", "msedge"];

/** Where they lie on systems that do not put them on the search path. */
const usualPlaces = [
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
  "C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe",
];

/** The first installed browser that can print a page to a PDF file; nothing where there is none. */
export async function findBrowser(searchPath: string): Promise<string | undefined> {
  const folders = searchPath.split(delimiter).filter((folder) => folder !== "");
  const candidates = [...folders.flatMap((folder) => names.map((name) => join(folder, name))), ...usualPlaces];
  for (const candidate of candidates) if (await isProgram(candidate)) return candidate;
  return undefined;
}

function isProgram(path: string): Promise<boolean> {
  return access(path, constants.X_OK).then(
    () => true,
    () => false,
  );
}

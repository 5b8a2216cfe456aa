import { type Browser, chromium } from "playwright-core";

/** Chromium without a sandbox, for it runs as root in a container, and without anything that calls home. */
const settings = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--no-first-run",
];

export function openBrowser(executablePath: string): Promise<Browser> {
  return chromium.launch({ executablePath, args: settings });
}

import { type Browser, type BrowserContextOptions, chromium, type Page } from "playwright-core";

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

/** A page, the addresses that it asked for, and what it complained of. */
export type OpenedPage = { page: Page; requests: string[]; messages: string[] };

/**
 * Opens pages with the network off, one after the other in the same tab for all that are opened in the same way: a new
 * context takes a process of its own.
 */
export function openerIn(browser: Browser): (address: string, how?: BrowserContextOptions) => Promise<OpenedPage> {
  const tabs = new Map<string, OpenedPage>();
  return async (address, { viewport = { width: 1280, height: 900 }, ...how } = {}) => {
    const key = JSON.stringify(how);
    const tab = tabs.get(key) ?? (await newTab(browser, how));
    tabs.set(key, tab);
    await tab.page.emulateMedia({ media: null });
    if (viewport !== null) await tab.page.setViewportSize(viewport);
    for (const list of [tab.requests, tab.messages]) list.length = 0;
    await tab.page.goto(address, { waitUntil: "load" });
    return tab;
  };
}

async function newTab(browser: Browser, how: BrowserContextOptions): Promise<OpenedPage> {
  const context = await browser.newContext({ offline: true, ...how });
  const page = await context.newPage();
  page.setDefaultTimeout(10_000);
  const [requests, messages]: [string[], string[]] = [[], []];
  page.on("request", (request) => requests.push(request.url()));
  page.on("console", (message) => messages.push(message.text()));
  page.on("pageerror", (fault) => messages.push(fault.message));
  return { page, requests, messages };
}

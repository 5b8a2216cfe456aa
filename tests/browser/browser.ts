import axe from "axe-core";
import { type Browser, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { expect } from "vitest";

/** Chromium without a sandbox, for it runs as root in a container, and without anything that calls home. */
const settings = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--no-first-run",
];

let browser: Promise<Browser> | undefined;

/** Started once for all test files of a process, with which it ends; none of them closes it. */
function openBrowser(executablePath: string): Promise<Browser> {
  browser ??= chromium.launch({ executablePath, args: settings });
  return browser;
}

/** A page, the addresses that it asked for, and what it complained of. */
export type OpenedPage = { page: Page; requests: string[]; messages: string[] };

const tabs = new Map<string, OpenedPage>();

/**
 * Opens a page in Chromium with the network off, one after the other in the same tab for all that are opened in the same
 * way: a new context takes a process of its own.
 */
export async function opened(
  executablePath: string,
  address: string,
  { viewport = { width: 1280, height: 900 }, ...how }: BrowserContextOptions = {},
): Promise<OpenedPage> {
  const key = JSON.stringify(how);
  const tab = tabs.get(key) ?? (await newTab(await openBrowser(executablePath), how));
  tabs.set(key, tab);
  await tab.page.emulateMedia({ media: null });
  if (viewport !== null) await tab.page.setViewportSize(viewport);
  for (const list of [tab.requests, tab.messages]) list.length = 0;
  await tab.page.goto(address, { waitUntil: "load" });
  return tab;
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

/** What axe finds in a page, or in the part that its words for a context say; it finds more than ten rules kept. */
export async function axeFindings(page: Page, context = "document"): Promise<readonly string[]> {
  await page.evaluate(axe.source);
  // Of the rules that are kept one place each is given, for only their number is asked.
  const found = await page.evaluate(`axe.run(${context}, { resultTypes: ["violations"] })`);
  const { passes, violations } = found as axe.AxeResults;
  expect(passes.length).toBeGreaterThan(10);
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(" | ")}`);
}

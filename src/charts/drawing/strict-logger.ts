import type { LoggerInterface } from "vega";

/** A warning of vega or vega-lite means a wrong specification or wrong data: it throws and no chart is drawn. */
export const strictLogger: LoggerInterface = {
  level: ((level?: number) => (level === undefined ? 0 : strictLogger)) as LoggerInterface["level"],
  error: refuse,
  warn: refuse,
  info: () => strictLogger,
  debug: () => strictLogger,
};

function refuse(...messages: readonly unknown[]): never {
  throw new Error(`chart: ${messages.map(String).join(" ")}`);
}

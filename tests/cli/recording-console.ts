import type { Console } from "../../src/cli/console.ts";

/** A console that keeps what it is told; it is 2026-11-25, shortly after two, and who is asked gives these secrets. */
export function recordingConsole(...secrets: string[]): Console & { printed: string[]; complained: string[] } {
  const printed: string[] = [];
  const complained: string[] = [];
  return {
    printed,
    complained,
    print: (text) => printed.push(text),
    complain: (text) => complained.push(text),
    isTerminal: false,
    today: () => "2026-11-25",
    now: () => "2026-11-25T14:05:00+01:00",
    askSecret: async () => secrets.shift(),
  };
}

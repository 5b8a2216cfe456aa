import type { Console } from "../../src/cli/console.ts";

/** A console that keeps what it is told; today is 2026-11-25. */
export function recordingConsole(): Console & { printed: string[]; complained: string[] } {
  const printed: string[] = [];
  const complained: string[] = [];
  return {
    printed,
    complained,
    print: (text) => printed.push(text),
    complain: (text) => complained.push(text),
    isTerminal: false,
    today: () => "2026-11-25",
  };
}

import type { Console } from "./console.ts";

/** One line that counts, on a terminal only and for more than a handful. */
export function progressOn(console: Console): (done: number, all: number) => void {
  const start = performance.now();
  return (done, all) => {
    if (!console.isTerminal || all < 10) return;
    const left = Math.round((((performance.now() - start) / done) * (all - done)) / 1000);
    process.stderr.write(done === all ? "\r\u001b[K" : `\r${done} of ${all}, ${left} s left \u001b[K`);
  };
}

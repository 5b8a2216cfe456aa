import type { Console } from "./console.ts";

/** How far back the rate looks: what is left is reckoned by how it goes now, not by how it began. */
const windowMilliseconds = 10_000;
/** A terminal is written to no more often than this. */
const leastBetweenMilliseconds = 200;

type Progress = (done: number, all: number) => void;
type Line = { write: (text: string) => void; now: () => number; isQuiet?: boolean | undefined };

const onStandardError: Line = { write: (text) => process.stderr.write(text), now: () => performance.now() };

/** One line that counts, with rate and time left by the last seconds; on a terminal only, for more than a handful. */
export function progressOn(
  console: Pick<Console, "isTerminal">,
  isQuiet = false,
  line: Line = onStandardError,
): Progress {
  const start = line.now();
  let steps = [{ time: start, done: 0 }];
  let shown = Number.NEGATIVE_INFINITY;
  return (done, all) => {
    if (!console.isTerminal || isQuiet || all < 10) return;
    const time = line.now();
    steps = [...steps.filter((step) => time - step.time <= windowMilliseconds), { time, done }];
    if (done === all) line.write("\r\u001b[K");
    else if (time - shown >= leastBetweenMilliseconds) {
      shown = time;
      line.write(`\r${progressWords(done, all, steps)} \u001b[K`);
    }
  };
}

function progressWords(done: number, all: number, steps: readonly { time: number; done: number }[]): string {
  const [first, last] = [steps[0], steps.at(-1)];
  const seconds = first && last ? (last.time - first.time) / 1000 : 0;
  const rate = first && last && seconds > 0 ? (last.done - first.done) / seconds : 0;
  if (rate === 0) return `${done} of ${all}`;
  return `${done} of ${all}, ${rate.toPrecision(2)} a second, ${Math.ceil((all - done) / rate)} s left`;
}

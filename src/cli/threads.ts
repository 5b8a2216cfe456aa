import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { Worker } from "node:worker_threads";

/** So much waits for each thread, or for those before it: enough that none stands idle, little in memory. */
const ahead = 3;

/**
 * A heap is looked through when it has doubled, and not when it has grown to four times what was left the time before, as V8
 * does where there is much memory: two threads then have 0.1 GB less of what nobody holds any more.
 */
const heapGrowth = "--heap-growing-percent=100";

/** Half of what V8 takes by itself: 300 records then take 0.37 GB in all instead of 0.44, and no longer. */
const maxYoungGenerationSizeMb = 24;

/**
 * Keeps the memory of this thread, and of those that it starts, near to what they hold. V8 takes none of the code that the
 * build kept from then on, so that it is worth its while for many records only.
 */
export function keepMemoryLow(): void {
  setFlagsFromString(heapGrowth);
}

/**
 * Lets go of what this thread read and does not hold any more, before others are started: by itself it would wait until as
 * much again had come.
 */
export function letGo(): void {
  setFlagsFromString("--expose-gc");
  const collect = runInNewContext("gc") as () => void;
  setFlagsFromString("--no-expose-gc");
  collect();
}

/** Does tasks elsewhere; results come back in the order in which the tasks were sent. */
export type Thread<Task, Result> = { do: (task: Task) => Promise<Result>; end: () => Promise<unknown> };

/** Hands the tasks round, and gives the results in the order of the tasks, whichever thread is faster. */
export async function* onThreads<Task, Result>(
  newThread: () => Thread<Task, Result>,
  count: number,
  tasks: AsyncIterable<Task> | Iterable<Task>,
): AsyncGenerator<Result> {
  const threads = Array.from({ length: count }, newThread);
  const pending: Promise<Result>[] = [];
  try {
    let sent = 0;
    for await (const task of tasks) {
      const result = (threads[sent % count] as Thread<Task, Result>).do(task);
      // Told when it is its turn.
      result.catch(() => undefined);
      pending.push(result);
      sent += 1;
      if (pending.length >= ahead * count) yield await (pending.shift() as Promise<Result>);
    }
    for (const result of pending) yield await result;
  } finally {
    await Promise.all(threads.map(({ end }) => end()));
  }
}

/** A thread of a file that answers each message with one, in their order; `data` is what it is started with. */
export function workerThread<Task, Result>(file: string, data?: unknown): Thread<Task, Result> {
  const worker = new Worker(file, { workerData: data, resourceLimits: { maxYoungGenerationSizeMb } });
  const waiting: { done: (result: Result) => void; failed: (fault: unknown) => void }[] = [];
  worker.on("message", (result: Result) => waiting.shift()?.done(result));
  worker.on("error", (fault) => {
    for (const { failed } of waiting.splice(0)) failed(fault);
  });
  return {
    do: (task) =>
      new Promise((done, failed) => {
        waiting.push({ done, failed });
        worker.postMessage(task);
      }),
    end: () => worker.terminate(),
  };
}

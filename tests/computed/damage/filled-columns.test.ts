import { expect, test } from "vitest";
import { howMany } from "../../how-many.ts";
import { inFolder } from "../../jobs/memory-disk.ts";
import { reportedFrom } from "../../jobs/reported-records.ts";
import { filledColumns } from "./filled-columns.ts";

/** What an interpreter writes where a number, a text or a thing is missing. */
const unwritten = /NaN|undefined|Infinity|\[object/u;
const notOfTheText = /<script.*?<\/script>|<style>.*?<\/style>/gsu;

test("columns that were filled down are a record that says what it can, and never a fault", async () => {
  let written = 0;
  for (let seed = 1; seed <= howMany(50, 400); seed += 1) {
    const { files } = await reportedFrom(inFolder("book", filledColumns(seed)), "book").catch((fault: unknown) => {
      throw new Error(`seed ${seed}`, { cause: fault });
    });
    for (const [path, text] of files) {
      if (!path.endsWith(".html")) continue;
      written += 1;
      expect(String(text).replace(notOfTheText, ""), `seed ${seed}`).not.toMatch(unwritten);
    }
  }
  expect(written).toBeGreaterThan(howMany(30, 250));
});

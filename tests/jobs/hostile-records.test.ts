import { expect, test } from "vitest";
import { recordVerifier } from "../../src/jobs/signing/verify-record.ts";
import type { Texts } from "../workbook/smallest-workbook.ts";
import { hostileTexts, isBlank } from "./hostile-texts.ts";
import { hostileColumns, hostileWorkbook } from "./hostile-workbook.ts";
import { inFolder } from "./memory-disk.ts";
import { reportedFrom, softwareVersion } from "./reported-records.ts";

const count = hostileTexts.length;
const textColumns = hostileColumns.filter(({ isText, isKey }) => isText && !isKey);

/** How many files a workbook gives, and what is doubted of them. */
async function doubted(texts: Texts) {
  const { files } = await reportedFrom(inFolder("book", texts), "book");
  const verify = recordVerifier();
  const doubts: string[] = [];
  for (const [path, text] of files) {
    for await (const { about, place, says } of verify(text, path, { softwareVersion, signers: undefined })) {
      doubts.push(`${path}: ${about}, ${place}: ${says}`);
    }
  }
  return { files: files.size, doubts };
}

test("a record with hostile texts in its cells, each in another column, is made again without a doubt", {
  timeout: 60_000,
}, async () => {
  const texts = hostileWorkbook(count, (column, loop) => {
    const place = textColumns.indexOf(column);
    const hostile = place === -1 ? undefined : hostileTexts[(loop + place) % count];
    return hostile && isBlank(hostile) && column.isRequired ? undefined : hostile;
  });
  expect(await doubted(texts)).toEqual({ files: 2 * count, doubts: [] });
});

test.each(["tag", "calibration", "standard", "output"])(
  "and so is one whose %s is such a text",
  { timeout: 60_000 },
  async (key) => {
    const taken = hostileTexts.filter(
      (hostile) => !isBlank(hostile) && (key !== "standard" || !/[;,]/u.test(hostile.text)),
    );
    const texts = hostileWorkbook(taken.length, ({ name, isKey }, loop) =>
      isKey && name === key ? taken[loop] : undefined,
    );
    const { files, doubts } = await doubted(texts);
    expect(doubts).toEqual([]);
    expect(files).toBeGreaterThan(30);
  },
);

import { expect, test } from "vitest";
import { recordVerifier } from "../../src/jobs/signing/verify-record.ts";
import { howMany } from "../how-many.ts";
import type { Texts } from "../workbook/smallest-workbook.ts";
import { type HostileText, hostileTexts, isBlank } from "./hostile-texts.ts";
import { hostileColumns, hostileWorkbook } from "./hostile-workbook.ts";
import { inFolder } from "./memory-disk.ts";
import { reportedFrom, softwareVersion } from "./reported-records.ts";

const count = hostileTexts.length;
/** So many loops show every text, each in some of the columns; as many as there are texts, each in all of them. */
const loops = howMany(12, count);
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

test("a record with hostile texts in its cells, each in another column, is made again without a doubt", async () => {
  const texts = hostileWorkbook(loops, (column, loop) => {
    const place = textColumns.indexOf(column);
    const hostile = place === -1 ? undefined : hostileTexts[(loop + place) % count];
    return hostile && isBlank(hostile) && column.isRequired ? undefined : hostile;
  });
  expect(await doubted(texts)).toEqual({ files: 2 * loops, doubts: [] });
});

/** Names by which tables refer to each other, each loop with another text in each; standards stand in a list. */
const keys = ["tag", "calibration", "standard", "output"];
const names = hostileTexts.filter((hostile) => !isBlank(hostile));
const canName = (key: string, { text }: HostileText) => key !== "standard" || !/[;,]/u.test(text);

test("and so is one whose tag, calibration, standard and output are such texts", async () => {
  const some = howMany(12, names.length);
  const texts = hostileWorkbook(some, ({ name, isKey }, loop) => {
    const hostile = isKey ? names[(loop + 7 * keys.indexOf(name)) % names.length] : undefined;
    return hostile && canName(name, hostile) ? hostile : undefined;
  });
  expect(names.length).toBeGreaterThan(20);
  expect(await doubted(texts)).toEqual({ files: 2 * some, doubts: [] });
});

import { expect, test } from "vitest";
import { makeLabels } from "../../../src/jobs/records/make-labels.ts";
import { ProblemList } from "../../../src/problems/problem-list.ts";
import { sentence } from "../../../src/problems/sentence.ts";
import { sealRecord } from "../../../src/proof/seal-record.ts";
import { sampleRecord } from "../../charts/sample-record.ts";
import { memoryDisk } from "../memory-disk.ts";

const json = (tag: string) => JSON.stringify(sealRecord(sampleRecord({ tag })));
const form = { isSheet: true, skipped: 0, out: "labels.html" };

async function made(texts: Record<string, string>, paths: readonly string[], refuses?: () => boolean) {
  const disk = memoryDisk(texts, refuses);
  const problems = new ProblemList();
  const count = await makeLabels(disk, paths, form, problems);
  return { count, page: disk.written.get("labels.html"), told: problems.all.map(sentence) };
}

test("a record that is named twice, as page and as JSON, has one label", async () => {
  const page = `<script type="application/json" id="record">${json("LT-1").replaceAll("<", "\\u003c")}</script>`;
  const { count, page: labels } = await made({ a: json("LT-1"), b: page, c: json("LT-2") }, ["a", "b", "c"]);
  expect(count).toBe(2);
  expect(labels?.match(/<h2><bdi>[^<]*<\/bdi><\/h2>/gu)).toEqual([
    "<h2><bdi>LT-1</bdi></h2>",
    "<h2><bdi>LT-2</bdi></h2>",
  ]);
});

test("nothing is written where one of the files is no record, or where the disk refuses", async () => {
  const wrong = await made({ a: json("LT-1"), b: "tag,serial" }, ["a", "b"]);
  expect(wrong).toMatchObject({ count: 0, page: undefined });
  expect(wrong.told[0]).toMatch(/^b: this is no record/u);
  const refused = await made({ a: json("LT-1") }, ["a"], () => true);
  expect(refused).toMatchObject({ count: 0, page: undefined });
  expect(refused.told[0]).toMatch(/no room for labels.html/u);
});

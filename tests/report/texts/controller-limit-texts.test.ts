import { expect, test } from "vitest";
import type { ControllerLimitRecord } from "../../../src/record/controller-limit-schema.ts";
import { numberStyleOf } from "../../../src/report/style/number-style.ts";
import { limitSentences, limitWords } from "../../../src/report/texts/controller-limit-texts.ts";
import { demoRecord } from "../demo-records.ts";

const record = demoRecord("ZT-330");
const limit: ControllerLimitRecord = {
  ...{ row: 2, limit: "high alarm", value: 1500, acts: "above", delay: 2, deadBand: 20, meant: 1500 },
  direction: "recede",
  found: [
    { phase: "asFound", actedAt: 1480, expandedUncertainty: 4 },
    { phase: "asLeft", actedAt: null, expandedUncertainty: null, notDetermined: "nothing was read there" },
  ],
};

test("says where a limit acts, and why it is not known", () => {
  const [found, left] = limitSentences(record, limit, numberStyleOf(record));
  expect(found).toMatch(
    /^high alarm, as found: acts at 1480(?:\.0+)? mm instead of 1500(?:\.0+)? mm, ± 4(?:\.0+)? mm\.$/u,
  );
  expect(left).toBe("high alarm, as left: not determined: nothing was read there.");
  expect(limitWords(record, limit)).toBe("above 1500 mm, after 2 s, back by 20 mm");
  expect(limitSentences(record, { ...limit, found: [] }, numberStyleOf(record))).toEqual([]);
});

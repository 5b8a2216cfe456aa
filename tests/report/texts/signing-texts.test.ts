import { expect, test } from "vitest";
import {
  dayOf,
  missingWords,
  printedStateWords,
  sameSignerWords,
  stateWords,
  timeWords,
} from "../../../src/report/texts/signing-texts.ts";

const ada = { name: "Ada Specimen", role: "engineer", keyId: "k", signedAt: "2026-11-25T14:05:00+01:00" } as const;
const performed = { ...ada, meaning: "performed" } as const;

test.each([
  [{ given: [], missing: ["performed", "authorised"], issuedAt: undefined }, "Draft, not signed", "DRAFT, not signed"],
  [
    { given: [performed], missing: ["reviewed", "authorised"], issuedAt: undefined },
    "Draft, not yet reviewed and authorised",
    "DRAFT, not yet reviewed and authorised",
  ],
  [
    { given: [performed], missing: [], issuedAt: "2026-11-25T23:59:00-05:00" },
    "Issued 2026-11-25",
    "issued 2026-11-25",
  ],
] as const)("state %# is said in words, a draft in capitals where it is printed", (state, words, printed) => {
  expect(stateWords(state)).toBe(words);
  expect(printedStateWords(state)).toBe(printed);
});

test("what is missing is listed as people list things", () => {
  expect(missingWords(["authorised"])).toBe("not yet authorised");
  expect(missingWords(["performed", "reviewed", "authorised"])).toBe("not yet performed, reviewed and authorised");
});

test("a time is said with its offset, and a day is that of the signer", () => {
  expect(timeWords("2026-11-25T14:05:00+01:00")).toBe("2026-11-25 14:05:00 +01:00");
  expect(timeWords("2026-11-25T14:05:00.123Z")).toBe("2026-11-25 14:05:00.123 +00:00");
  expect(dayOf("2026-11-25T23:59:59-11:00")).toBe("2026-11-25");
});

test("one person who signed twice is named, two people are not", () => {
  const authorised = { ...ada, meaning: "authorised" } as const;
  expect(sameSignerWords([performed, authorised])).toBe(
    "Ada Specimen signed it as performed and as authorised: one person, not two.",
  );
  expect(sameSignerWords([performed, { ...authorised, name: "Tom Sample" }])).toBeUndefined();
  expect(sameSignerWords([])).toBeUndefined();
});

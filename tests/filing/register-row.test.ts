import { expect, test } from "vitest";
import type { DecidedLine } from "../../src/filing/ledger-line.ts";
import { makeRegister } from "../../src/filing/make-register.ts";
import { lateOf } from "../../src/filing/register-row.ts";
import { fingerprintOf } from "../../src/proof/fingerprint-words.ts";
import { entry, phaseInShort } from "./sample-entries.ts";

const registerOf = (entries: Parameters<typeof makeRegister>[0]["entries"], decisions: DecidedLine[] = []) =>
  makeRegister({ entries, decisions }, "2026-11-25", 30);

test("a row says with what and by whom: serial, procedure, signers, paper, standards, fingerprint", () => {
  const last = entry(
    { serial: "S-7" },
    {
      ...{ procedure: "P-1, edition 2", signedBy: ["Ada Specimen (authorised)"], paper: "binder 7" },
      standards: [{ standard: "METER-3", certificate: "K-1", dueOn: "2027-01-01" }],
    },
  );
  expect(registerOf([last]).rows).toMatchObject([
    {
      ...{ serial: "S-7", procedure: "P-1, edition 2", standards: ["METER-3 (K-1)"] },
      signedBy: ["Ada Specimen (authorised)", "on paper: binder 7"],
      fingerprint: fingerprintOf("a".repeat(64)),
    },
  ]);
});

test("what was decided of the last record stands in its row: by the ledger with a name, else by the record", () => {
  const failed = (more: object) => entry({ asFound: phaseInShort("fail") }, { fileSha256: "page", ...more });
  const decision = { fileSha256: "page", by: "Ada Specimen", decision: "weighed again" } as DecidedLine;
  const byRecord = failed({ impactDecision: "none used it" });
  expect(registerOf([byRecord]).rows[0]?.decided).toEqual({ by: null, decision: "none used it" });
  expect(registerOf([byRecord], [decision]).rows[0]?.decided).toEqual({
    by: "Ada Specimen",
    decision: "weighed again",
  });
  expect(registerOf([failed({})]).rows[0]?.decided).toBeNull();
});

test("a calibration after its due day is late by so many days; one on that day is not, nor one without a day before", () => {
  const done = (performedOn: string, nextDue: string | null) => entry({ performedOn, nextDue });
  const late = lateOf([
    done("2023-01-01", "2024-01-01"),
    done("2024-01-01", "2025-01-01"),
    done("2025-01-31", null),
    done("2026-05-01", null),
  ]);
  expect(late).toMatchObject([{ dueOn: "2025-01-01", performedOn: "2025-01-31", days: 30 }]);
});

test("findings stand by age, the oldest first, one without a day before all", () => {
  const failed = (performedOn: string | null) => entry({ performedOn, asFound: phaseInShort("fail") });
  const { openFindings } = registerOf([failed("2026-11-01"), failed("2025-11-25"), failed(null)]);
  expect(openFindings.map(({ days }) => days)).toEqual([null, 365, 24]);
});

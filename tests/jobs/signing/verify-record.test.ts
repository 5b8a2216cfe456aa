import { constants, gzipSync, type ZlibOptions } from "node:zlib";
import { describe, expect, test } from "vitest";
import { recordJson, recordPage } from "../../../src/jobs/records/write-record.ts";
import { recordVerifier, verifyRecord } from "../../../src/jobs/signing/verify-record.ts";
import type { Signer } from "../../../src/model/signer.ts";
import { sealOf } from "../../../src/proof/seal-record.ts";
import type { Doubt } from "../../../src/record/doubt.ts";
import { embeddedJson, withPlainRecord } from "../../../src/record/record-element.ts";
import type { SealedRecord } from "../../../src/record/record-schema.ts";
import { ada, signers as everybody, ines, signedBy } from "../../proof/sample-signing.ts";
import { withText } from "../../workbook/smallest-workbook.ts";
import { inFolder } from "../memory-disk.ts";
import { demoTexts, reportedFrom, reportedRecord, softwareVersion } from "../reported-records.ts";

const { record, page, json } = await reportedRecord();

function verified(text: string, signers?: readonly Signer[]): Promise<readonly Doubt[]> {
  return verifyRecord(text, "a.html", { softwareVersion, signers });
}

const shortOf = (doubts: readonly Doubt[]) => doubts.map(({ about, place }) => `${about}: ${place}`);

/** What an attacker does who knows the program: the change, a new seal, and the page of it. */
function sealedAnew(changed: SealedRecord): SealedRecord {
  return { ...changed, seal: sealOf(changed) };
}

function changed(change: (copy: SealedRecord) => void): SealedRecord {
  const copy = structuredClone(record);
  change(copy);
  return copy;
}

describe("there is no doubt about", () => {
  test("a page and a JSON as they were written", async () => {
    expect(await verified(page)).toEqual([]);
    expect(await verified(json)).toEqual([]);
  });

  test("any record of the demonstration, page and JSON", async () => {
    const { files } = await reportedFrom(inFolder("demo", demoTexts), "demo");
    expect(files.size).toBeGreaterThanOrEqual(26);
    for (const [path, text] of files) expect(await verified(text), path).toEqual([]);
  });

  test("a signed record, by the table of its signers", async () => {
    const signed = signedBy(record, [ines, "performed"], [ada, "authorised"]);
    expect(await verified(await recordPage(signed), everybody)).toEqual([]);
    expect(await verified(recordJson(signed), everybody)).toEqual([]);
  });
});

describe("the file", () => {
  test("that holds no record, or one of another form, is told with the version that it needs", async () => {
    expect(await verified("<!doctype html><p>hello")).toMatchObject([{ about: "file", place: "a.html" }]);
    const other = JSON.stringify({ ...record, schema: "spanwright-record/99" });
    expect((await verified(other))[0]?.says).toBe(
      "the record is of form 99; this program reads forms 1 to 2; spanwright 0.1.0 wrote it and reads it",
    );
  });

  test("of another version is verified as far as both versions go: see verify-other-version.test.ts", async () => {
    expect(await verifyRecord(page, "a.html", { softwareVersion: "9.0.0", signers: undefined })).toEqual([]);
  });
});

describe("the figures", () => {
  test("one that was changed and sealed anew, with the page of it, is found by its path", async () => {
    const forged = sealedAnew(
      changed(({ phases }) => {
        if (phases.asFound?.zeroError) phases.asFound.zeroError.percentSpan = 0;
      }),
    );
    for (const text of [await recordPage(forged), recordJson(forged)]) {
      const doubts = await verified(text);
      expect(shortOf(doubts)).toEqual(["figures: phases.asFound.zeroError.percentSpan"]);
      expect(doubts[0]?.says).toMatch(/^the rows give 0\.06\d*, the record says 0$/u);
    }
  });

  test("a raw cell that was changed without what follows from it is found, with all that follows", async () => {
    const forged = sealedAnew(
      changed(({ inputs }) => {
        const [first] = inputs.rows.readings;
        if (first !== undefined) first.cells.signal = "4.00";
      }),
    );
    const places = (await verified(await recordPage(forged))).map(({ place }) => place);
    expect(places).toContain("phases.asFound.readings[0].signal");
    expect(places).toContain("further on");
  });

  test("what a program cannot make anything of is a doubt, not a crash", async () => {
    const forged = sealedAnew(changed(({ phases }) => phases.asFound?.points.splice(0)));
    const doubts = await verified(
      await recordPage(record).then((text) =>
        withPlainRecord(text).replace(/(id="record">).*(?=<)/u, (_, tag) => tag + JSON.stringify(forged)),
      ),
    );
    expect(doubts.map(({ about }) => about)).toContain("figures");
    expect(doubts.at(-1)?.about).toBe("page");
  });
});

describe("the text", () => {
  const reordered = () => {
    const { phases, ...rest } = record;
    return { phases, ...rest };
  };

  test("whose keys stand in another order is found, in a page and in a JSON, though the seal is the same", async () => {
    for (const text of [await recordPage(reordered()), recordJson(reordered())]) {
      expect(shortOf(await verified(text))).toEqual(["figures: the whole"]);
    }
    const deep = changed(({ inputs }) => {
      const [first] = inputs.rows.readings;
      if (first !== undefined) first.cells = Object.fromEntries(Object.entries(first.cells).toReversed());
    });
    expect(shortOf(await verified(recordJson(deep)))).toEqual(["figures: inputs.rows.readings[0].cells"]);
  });

  test("with a key twice is found, whichever of the two a reader takes", async () => {
    for (const text of [withPlainRecord(page), json]) {
      const twice = text.replace(/"revision":\s*1,/u, '"revision":7,"revision":1,');
      expect(twice).not.toBe(text);
      expect((await verified(twice)).map(({ about }) => about)).toEqual(["page"]);
    }
  });

  test("with a space more, a number in another form, or another escape is found", async () => {
    const plain = withPlainRecord(page);
    const others: readonly (readonly [string, string, string])[] = [
      [plain, '"revision":1', '"revision": 1'],
      [json, '"revision":1', '"revision": 1'],
      [plain, '"revision":1', '"revision":1.0'],
      [plain, '"schema"', '"\\u0073chema"'],
      [json, '{"schema"', '{ "schema"'],
    ];
    for (const [text, from, to] of others) {
      const other = text.replace(from, to);
      expect(other).not.toBe(text);
      expect(
        (await verified(other)).map(({ about }) => about),
        to,
      ).toEqual(["page"]);
    }
    expect((await verified(`${json} `))[0]).toMatchObject({ about: "page" });
    expect((await verified(json.trimEnd()))[0]).toMatchObject({ about: "page" });
  });

  test("that holds its record packed otherwise, or plain, is the same page, and that is said", async () => {
    const packed = (options: ZlibOptions) => `${gzipSync(embeddedJson(record), options).toString("base64")}`;
    const others = [
      withPlainRecord(page),
      page.replace(/(?<=id="record">)[^<]*/u, packed({ level: 1 })),
      page.replace(/(?<=id="record">)[^<]*/u, packed({ strategy: constants.Z_HUFFMAN_ONLY })),
    ];
    for (const other of others) {
      const verifying = recordVerifier()(other, "a.html", { softwareVersion, signers: undefined });
      expect(await verifying.next()).toEqual({
        done: true,
        value: expect.stringMatching(/ packed otherwise than here/u),
      });
    }
    expect(await recordVerifier()(page, "a.html", { softwareVersion, signers: undefined }).next()).toEqual({
      done: true,
      value: undefined,
    });
  });

  test("whose lines were ended otherwise on their way is told so", async () => {
    expect(await verified(page.replaceAll("\n", "\r\n"))).toEqual([
      {
        about: "page",
        place: "every line",
        says: 'the record gives "line feed", the page has "carriage return and line feed"',
      },
    ]);
  });

  test("of a page that says another verdict is told with its heading and both texts", async () => {
    const doubts = await verified(page.replace(">It passes: the worst", ">It fails: the worst"));
    expect(doubts).toHaveLength(1);
    expect(doubts[0]).toMatchObject({ about: "page", place: expect.stringMatching(/^under ".+"$/u) });
    expect(doubts[0]?.says).toContain('the record gives "It passes: the worst reading is 13 % of the tolerance.');
    expect(doubts[0]?.says).toContain('the page has "It fails: the worst reading');
  });
});

describe("the signatures", () => {
  const signed = signedBy(record, [ines, "performed"], [ada, "authorised"]);

  test("without a table of signers are a doubt", async () => {
    expect(shortOf(await verified(await recordPage(signed)))).toEqual(["signatures: signOff"]);
  });

  test("of another record are found: raw cells changed, all computed and sealed anew, the signatures carried over", async () => {
    const { record: other } = await reportedRecord(withText("readings.csv", "50,12.01", "50,12.00"));
    const forged = { ...other, signOff: signed.signOff };
    expect(shortOf(await verified(await recordPage(forged), everybody))).toEqual([
      "signatures: signOff.signatures[0]",
      "signatures: signOff.signatures[1]",
    ]);
  });

  test("are what finds a changed raw cell: unsigned, with all that follows from it, nothing in the file tells", async () => {
    const { page: forged } = await reportedRecord(withText("readings.csv", "50,12.01", "50,12.00"));
    expect(forged).not.toBe(page);
    expect(await verified(forged)).toEqual([]);
  });

  test("that were taken off leave a draft, which the page has to say", async () => {
    const stripped = withPlainRecord(await recordPage(signed)).replace(/"signatures":\[.*?\]/u, '"signatures":[]');
    expect(shortOf(await verified(stripped, everybody))).toEqual([expect.stringMatching(/^page: /u)]);
  });
});

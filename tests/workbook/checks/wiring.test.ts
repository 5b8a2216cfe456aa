import { expect, test } from "vitest";
import { withColumn } from "../smallest-workbook.ts";
import { told } from "./told.ts";

const wired = (pins: string, outputs: readonly string[] = [], connector = "M12, 4 pins") => ({
  ...withColumn("instruments.csv", "connector,pins", `"${connector}",${pins}`),
  ...(outputs.length > 0 && {
    "outputs.csv": `tag,output,set_point,wire,pin\n${outputs.map((one) => `LT-1,${one}\n`).join("")}`,
  }),
});
const ofWiring = async (texts: Parameters<typeof told>[0]) => {
  return (await told(texts)).filter((one) => /^model\/(?:pin|wire)-/u.test(one));
};

// The common assignment of a four-pin connector: IEC 60947-5-2, from memory and common practice.
test.each([
  ["1 L+; 2 signal; 3 0 V; 4 Q1", ["Q1,50,black,4"]],
  ["1 +24 V, 3 GND, 4 Q1", ["Q1,50,BK,4", "Q2,60,white,2"]],
  ["1 L+; 2 Q2; 3 L-; 4 Q1; 5 signal", ["Q1,50,,4"]],
  ["see the drawing", ["Q1,50,12,X3"]],
])("pins that agree are no word: %s", async (pins, outputs) => {
  expect(await ofWiring(wired(pins, outputs, "M12, 5 pins"))).toEqual([]);
});

test("supply on exchanged pins, an output on two pins, and a wire of the supply's colour are told together", async () => {
  expect(await ofWiring(wired("1 0 V; 2 Q1; 3 L+; 4 signal", ["Q1,900,blue,3"]))).toEqual([
    "model/pin-uncommon instruments:2:pins",
    "model/pin-uncommon instruments:2:pins",
    "model/pin-contradicted outputs:2:pin",
    "model/wire-uncommon outputs:2:wire",
  ]);
});

test("an output on a pin that carries something else, where its own is not named", async () => {
  expect(await ofWiring(wired("1 L+; 2 signal; 3 0 V", ["Q1,50,,2"]))).toEqual([
    "model/pin-contradicted outputs:2:pin",
  ]);
  expect(await ofWiring(wired("1 L+; 3 0 V", ["Q1,50,,2"]))).toEqual([]);
});

test("a pin that stands twice in the text of the pins", async () => {
  expect(await ofWiring(wired("1 L+; 1 signal; 3 0 V; 4 Q1"))).toEqual(["model/pin-contradicted instruments:2:pins"]);
  expect(await ofWiring(wired("1 L+; 2 signal; 3 0 V; 4 Q1"))).toEqual([]);
});

test("a pin that the connector does not have; a connector of many pins has no common assignment", async () => {
  expect(await ofWiring(wired("1 L+; 3 0 V; 7 signal"))).toEqual(["model/pin-not-there instruments:2:pins"]);
  expect(await ofWiring(wired("1 signal; 7 L+; 8 0 V", [], "M12, 8 pins"))).toEqual([]);
});

test("what was found at the terminals of an output agrees with its row", async () => {
  const looked = async (measured: string) =>
    (
      await told({
        ...withColumn("instruments.csv", "connector", "M12"),
        "outputs.csv": "tag,output,set_point,polarity,controller_input\nLT-1,Q1,50,PNP,sinking\n",
        "loop_checks.csv": `calibration,item,result,measured\nC-1,Sink or source of Q1,pass,"${measured}"\n`,
      })
    ).filter((one) => one.startsWith("model/output-contradicted"));
  expect(await looked("PNP, sinking")).toEqual([]);
  expect(await looked("follows the lamp")).toEqual([]);
  expect(await looked("NPN, sinking")).toHaveLength(1);
  expect(await looked("NPN; sourcing")).toHaveLength(2);
});

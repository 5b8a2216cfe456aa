import { expect, test } from "vitest";
import { judgeTravel } from "../../../src/verdict/switching/judge-travel.ts";

test("1.2 % of repeat accuracy fails a limit of 1 % in the outputs table", () => {
  expect(judgeTravel("repeat", 1.2, 1)).toEqual({ limitPercent: 1, limitFrom: "outputs table", statement: "fail" });
});

test("on the limit is a pass, beyond it is a fail", () => {
  expect(judgeTravel("differential", 5, 5).statement).toBe("pass");
  expect(judgeTravel("differential", 5.000001, 5).statement).toBe("fail");
  expect(judgeTravel("repeat", 0, 1).statement).toBe("pass");
});

test("the tighter limit wins, and where there is none of the table it is that of the standard, said to be from memory", () => {
  const usual = "IEC 60947-5-2, from memory";
  expect(judgeTravel("differential", 1, undefined)).toMatchObject({ limitPercent: 20, limitFrom: usual });
  expect(judgeTravel("repeat", 1, undefined)).toMatchObject({ limitPercent: 10, limitFrom: usual });
  expect(judgeTravel("differential", 25, 30)).toEqual({ limitPercent: 20, limitFrom: usual, statement: "fail" });
  expect(judgeTravel("repeat", 1, 10)).toMatchObject({ limitPercent: 10, limitFrom: "outputs table" });
});

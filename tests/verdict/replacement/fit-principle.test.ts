import { expect, test } from "vitest";
import { principles } from "../../../src/model/instrument-words.ts";
import { fitPrinciple } from "../../../src/verdict/replacement/fit-principle.ts";
import { candidateWith, loopNeeds, told } from "./sample-loop-needs.ts";

test("a radar in the place of an ultrasonic sensor fits with a look at the surface", () => {
  expect(told(fitPrinciple(candidateWith({ principle: "radar" }), loopNeeds())[0])).toMatch(
    /^fits with a change: look at the place anew: a surface that sends microwaves back/u,
  );
});

test("every principle fits where it is there now, and each other asks for something of its own", () => {
  const named = principles.filter((principle) => principle !== "other");
  const reasons = named.map((principle) => {
    const instrument = { principle } as const;
    expect(fitPrinciple(candidateWith({ principle }), loopNeeds({ instrument }))[0]?.result).toBe("fits");
    const other = loopNeeds({ instrument: { principle: "other" } });
    const [cell] = fitPrinciple(candidateWith({ principle }), other);
    expect(cell?.result).toBe("fits with a change");
    return cell?.reason;
  });
  expect(new Set(reasons).size).toBe(named.length);
});

test("what is not named cannot be told, or is not compared", () => {
  const other = loopNeeds({ instrument: { principle: "other" } });
  expect(fitPrinciple(candidateWith({ principle: "other" }), other)[0]?.result).toBe("cannot be told");
  expect(fitPrinciple(candidateWith({ principle: undefined }), other)[0]?.result).toBe("cannot be told");
  expect(fitPrinciple(candidateWith({}), loopNeeds({ instrument: { principle: undefined } }))).toEqual([]);
});

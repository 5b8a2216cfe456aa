import { airTemperature } from "../causes/sensor-line-causes.ts";
import { rangeOfCardWrong } from "../causes/wiring-causes.ts";
import { type LoopItemKey, loopItems } from "../loop-check/loop-items.ts";
import { exceeds, reaches } from "./beside-threshold.ts";
import { remedyOf } from "./cause-remedy.ts";
import type { FailedCheck, PhaseState } from "./phase-state.ts";
import { partWords, sentence } from "./state-words.ts";
import { type Reason, type RecommendedStep, reasonOf, stepOf } from "./step.ts";
import type { SwitchStep } from "./switch-steps.ts";

type RepairPlace = "set-up" | "wiring";
type Repair = { of: RepairPlace; does: string; reason: Reason; before: string | null };

/**
 * What is to be put right around the sensor before anything is taught: set-up first, then wiring.
 *
 * @param state of the phase
 * @param findings that count in it
 * @param others of switched outputs that go back to the set-up or the wiring, of a card that has no finding
 * @returns no step, one, or one for each of the two
 * Source: own choice of remedies (`remedyOf`), in the order of the signal.
 * @example repairSteps(state, [], []) // []
 */
export function repairSteps(
  state: PhaseState,
  findings: PhaseState["findings"],
  others: readonly SwitchStep[],
): RecommendedStep[] {
  const repairs = [
    ...findings.flatMap((finding) => repairOf(finding, state)),
    ...wiringShare(state, findings),
    ...state.failedChecks.flatMap(checkRepair),
    ...others.map(({ of, does, reason }) => ({ of: of as RepairPlace, does, reason: { says: reason }, before: null })),
  ];
  return (["set-up", "wiring"] as const).flatMap((place) => {
    const here = repairs.filter(({ of }) => of === place);
    return here.length === 0 ? [] : [repairStep(place, here)];
  });
}

function repairStep(of: RepairPlace, repairs: readonly Repair[]): RecommendedStep {
  return stepOf({
    action: "repair wiring or set-up",
    of,
    does: [...new Set(repairs.map(({ does }) => sentence(does)))].join(" "),
    rule:
      of === "wiring"
        ? "wiring before sensor and scaling: what is wrong between them is mended there, and not taught away"
        : "set-up before sensor: what is wrong around it is put right there, and not taught away",
    reasons: [...new Map(repairs.map(({ reason }) => [reason.says, reason])).values()],
    before: repairs.find(({ before }) => before !== null)?.before ?? null,
  });
}

function repairOf(finding: PhaseState["findings"][number], { leftWithoutAir }: PhaseState): Repair[] {
  const remedy = remedyOf(finding);
  if (remedy.cures !== "set-up" && remedy.cures !== "wiring") return [];
  const air =
    finding.id === airTemperature.id && leftWithoutAir !== null && !exceeds(leftWithoutAir, 100)
      ? ` Without the error of the day's air the worst reading would be ${partWords(leftWithoutAir)}.`
      : "";
  const before = finding.rivals.length === 0 ? null : `To be sure of the cause: ${finding.separatedBy}.`;
  return [{ of: remedy.cures, does: remedy.does, reason: reasonOf(finding, { after: air }), before }];
}

/** A wire that changes the signal needs no name to be mended. */
function wiringShare({ stageParts, thresholds }: PhaseState, findings: PhaseState["findings"]): Repair[] {
  const part = stageParts.find(({ stage }) => stage === "wiring")?.part ?? 0;
  if (!reaches(part, thresholds.stageShareFrom) || findings.some(({ stage }) => stage === "wiring")) return [];
  return [
    {
      of: "wiring",
      does: "find what changes the signal between sensor and input card",
      reason: {
        says: `Between the terminals of the sensor and those of the card the signal changes by ${partWords(part)}.`,
      },
      before: null,
    },
  ];
}

/**
 * What the input card is off by, where no finding has a name for it: no constant of the scaling lies between signal and
 * counts, so it is the card's.
 *
 * @param state of a phase whose controller's part asks for work
 * @param findings that count in it
 * @returns one repair at most
 * Source: own choice.
 * @example cardRepairs({ ...state, stageParts: [{ stage: "input card", part: 0.9 }] }, [])[0]?.of // "wiring"
 */
export function cardRepairs(
  { stageParts, thresholds }: PhaseState,
  findings: PhaseState["findings"],
): readonly SwitchStep[] {
  const part = stageParts.find(({ stage }) => stage === "input card")?.part ?? 0;
  if (!reaches(part, thresholds.stageShareFrom) || findings.some(({ stage }) => stage === "input card")) return [];
  return [
    {
      action: "repair wiring or set-up",
      of: "wiring",
      does: rangeOfCardWrong.remedy.does as string,
      reason: `Between the signal and the raw counts it changes by ${partWords(part)}, and no scaling constant lies there.`,
    },
  ];
}

/** Items that the readings, the trips or the rows speak of themselves; and the one that comes last. */
const judgedElsewhere: readonly (LoopItemKey | null)[] = [
  "identity",
  "scaling",
  "end to end",
  "trip point",
  "restored",
];
/** The items up to the value that the controller shows are of wiring; those after it of settings and site. */
const ofWiring: ReadonlySet<LoopItemKey> = new Set(
  loopItems.slice(0, loopItems.findIndex(({ key }) => key === "end to end") + 1).map(({ key }) => key),
);

function checkRepair({ item, key, says, isContradiction }: FailedCheck): Repair[] {
  if (isContradiction || judgedElsewhere.includes(key)) return [];
  const isWiring = key === null || ofWiring.has(key);
  const reason = { says: `The loop check found “${item}” not in order${says === "" ? "" : `: ${says}`}.` };
  return [
    {
      of: isWiring ? "wiring" : "set-up",
      does: `put right what the loop check found at “${item}”`,
      reason,
      before: null,
    },
  ];
}

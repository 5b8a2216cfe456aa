import type { OverTheYears } from "../../record/over-the-years-schema.ts";
import { writePlain } from "../../units/write-number.ts";
import { controlChartWorking, proposalWords, reliabilityWords, staircaseWorking } from "../texts/history-texts.ts";

type ProposalsProps = { years: OverTheYears; unit: string };

/** What would follow for the interval by two methods, each with its working; and how reliable the loop was. */
export function IntervalProposals({ years, unit }: ProposalsProps) {
  const { staircase, controlChart, notDetermined, settings } = years;
  return (
    <>
      <h3>Interval: two proposals</h3>
      <p>
        By ILAC-G24:2022 / OIML D 10. <strong>The owner of the loop decides</strong>; nothing is changed by itself, and
        the agreed interval holds until the owner agrees to another one.
      </p>
      <div class="beside">
        <Proposal
          title="Method 1, staircase"
          proposal={staircase}
          why={notDetermined.staircase}
          working={staircaseWorking(years)}
        />
        <Proposal
          title="Method 2, control chart"
          proposal={controlChart}
          why={notDetermined.controlChart}
          working={controlChartWorking(years, unit)}
        />
      </div>
      {staircase !== null && controlChart !== null && (
        <p class="small">
          The staircase looks at how the last results lay in their tolerance, the control chart at the drift and the
          scatter of all since the last adjustment: where they differ, the shorter one is the careful one.
        </p>
      )}
      <p class="small">
        Settings: longer by × {writePlain(settings.extendBy)} after {settings.extendAfter ?? 1}{" "}
        {settings.extendAfter === undefined || settings.extendAfter === 1 ? "result" : "results in a row"} within{" "}
        {writePlain(100 * settings.extendWithin)} % of the tolerance, each after{" "}
        {writePlain(100 * settings.fullInterval)} % of the interval, shorter by ×{" "}
        {writePlain(settings.shortenConditionalBy)} after a conditional pass and × {writePlain(settings.shortenBy)} out
        of tolerance, from {settings.leastMonths} to {settings.mostMonths} months. The 80 % are the example of ILAC-G24,
        which makes the interval longer after one such result; the rest is our own choice for the owner to change.
      </p>
      <h3>Observed reliability</h3>
      <p>Found in tolerance at the end of an interval that began in tolerance: {reliabilityWords(years)}</p>
      <p class="small">
        A conditional fail, and what cannot be decided, counts as not in tolerance, a conditional pass as in tolerance.
        Intervals that began before a replacement are those of another sensor and do not count.
      </p>
    </>
  );
}

type ProposalProps = {
  title: string;
  proposal: { months: number; on: string | null } | null;
  why: string | undefined;
  working: readonly string[];
};

function Proposal({ title, proposal, why, working }: ProposalProps) {
  return (
    <div class="finding">
      <h4>
        {title}: {proposal === null ? <span class="not-determined">{why}</span> : proposalWords(proposal, why)}
      </h4>
      {working.map((sentence) => (
        <p key={sentence} class="small">
          {sentence}
        </p>
      ))}
    </div>
  );
}

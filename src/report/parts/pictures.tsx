import type { Drawing } from "../../charts/draw.ts";

/** A chart with its title and caption; the drawing carries its own text for screen readers. */
export function Picture({ drawing, kind }: { drawing: Drawing; kind: "wide-only" | "narrow-only" | "half" }) {
  return (
    <figure class={`picture ${kind}`}>
      <h3>{drawing.title}</h3>
      <div class="drawing" dangerouslySetInnerHTML={{ __html: drawing.svg }} />
      <figcaption>{drawing.caption}</figcaption>
    </figure>
  );
}

/** Other pictures, two beside each other where there is room; for one that cannot be drawn, the reason. */
export function OtherPictures({ drawings, absent }: { drawings: readonly Drawing[]; absent: readonly string[] }) {
  return (
    <section aria-labelledby="pictures-title">
      <h2 id="pictures-title">Further pictures</h2>
      <div class="pictures">
        {drawings.map((drawing) => (
          <Picture key={drawing.title} drawing={drawing} kind="half" />
        ))}
      </div>
      {absent.map((reason) => (
        <p key={reason} class="not-determined">
          {reason}
        </p>
      ))}
    </section>
  );
}

import type { Drawing } from "../../charts/drawing/draw.ts";

type PictureProps = {
  drawing: Drawing;
  kind: "wide-only" | "narrow-only" | "half";
  /** Left out where a picture before it has the same caption. */
  isExplained?: boolean;
};

/** A chart with its title and caption; the drawing carries its own text for screen readers. */
export function Picture({ drawing, kind, isExplained = true }: PictureProps) {
  return (
    <figure class={`picture ${kind}`}>
      <p class="picture-title">{drawing.title}</p>
      <div class="drawing" dangerouslySetInnerHTML={{ __html: drawing.svg }} />
      {isExplained && <figcaption>{drawing.caption}</figcaption>}
    </figure>
  );
}

/** Other pictures, two beside each other where there is room; for one that cannot be drawn, the reason. */
export function OtherPictures({ drawings, absent }: { drawings: readonly Drawing[]; absent: readonly string[] }) {
  return (
    <section class="part" aria-labelledby="pictures-title">
      <h3 id="pictures-title">Pictures</h3>
      <div class="pictures">
        {drawings.map((drawing) => (
          <Picture
            key={drawing.title}
            drawing={drawing}
            kind="half"
            isExplained={isFirstOfItsKind(drawing, drawings)}
          />
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

function isFirstOfItsKind(drawing: Drawing, drawings: readonly Drawing[]): boolean {
  return drawings.find(({ caption }) => caption === drawing.caption) === drawing;
}

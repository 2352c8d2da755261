/** Knit stitches, small: two leaning strokes to a stitch, so that the band is known by its texture. */
export const Weave = ({ id }: { readonly id: string }) => (
  <pattern id={id} width="7" height="6" patternUnits="userSpaceOnUse">
    <rect className="df-weave-ground" width="7" height="6" />
    <path className="df-weave-stitch" d="M0.6 0.4 L3.5 4.6 L6.4 0.4" />
  </pattern>
);

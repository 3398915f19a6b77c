import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { Resvg } from "@resvg/resvg-js";
import satori from "satori";

type Style = Readonly<Record<string, string | number>>;
/** An element as satori lays it out: everything is a flex box, padding and border come on top of its width. */
export interface Box {
  readonly type: "div";
  readonly key: null;
  readonly props: { readonly style: Style; readonly children: string | readonly Box[] };
}

export const box = (style: Style, children: string | readonly Box[] = []): Box => ({
  type: "div",
  key: null,
  props: { style: { display: "flex", ...style }, children },
});

const require = createRequire(import.meta.url);
const font = (file: string, weight: 400 | 700) => ({
  name: "DejaVu Sans",
  data: readFileSync(require.resolve(`dejavu-fonts-ttf/ttf/${file}.ttf`)),
  weight,
  style: "normal" as const,
});
const fonts = [font("DejaVuSans", 400), font("DejaVuSans-Bold", 700)];

interface Paper {
  readonly width: number;
  readonly marginPx: number;
  readonly background: string;
}

/** Draws boxes one below the other as a PNG, as high as they need. */
export async function drawPicture(boxes: readonly Box[], { marginPx, width, background }: Paper): Promise<Uint8Array> {
  const page = box(
    { flexDirection: "column", width: width - 2 * marginPx, padding: marginPx, backgroundColor: background, fontFamily: "DejaVu Sans" },
    boxes,
  );
  const svg = await satori(page, { width, fonts });
  return new Resvg(svg, { font: { loadSystemFonts: false } }).render().asPng();
}

import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { Resvg } from "@resvg/resvg-js";
import satori from "satori";
import type { Element } from "./cardElement.ts";

const require = createRequire(import.meta.url);
const fontFile = (name: string): Buffer => readFileSync(require.resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`));
const fonts = [
  { name: "DejaVu Sans", data: fontFile("DejaVuSans"), weight: 400 as const, style: "normal" as const },
  { name: "DejaVu Sans", data: fontFile("DejaVuSans-Bold"), weight: 700 as const, style: "normal" as const },
];

/** Draws an element 390 px wide and as high as it is. */
export async function drawPicture(element: Element): Promise<Uint8Array> {
  const svg = await satori(element as unknown as Parameters<typeof satori>[0], { width: 390, fonts });
  return new Resvg(svg, { font: { loadSystemFonts: false } }).render().asPng();
}

import { createRequire } from "node:module";
import { FONT } from "./boardLook.ts";
import { boardOption } from "./boardOption.ts";
import type { ReadyBoardPrint } from "./readyBoardPrint.ts";

const require = createRequire(import.meta.url);
const fontFiles = ["DejaVuSansCondensed.ttf", "DejaVuSansCondensed-Bold.ttf"].map((file) => require.resolve(`dejavu-fonts-ttf/ttf/${file}`));

/** The chart as SVG; the charting library is large and loaded when the first one is drawn. */
export async function readyBoardSvg(board: ReadyBoardPrint): Promise<string> {
  const { init } = await import("echarts");
  const { option, width, height } = boardOption(board);
  const chart = init(null, null, { renderer: "svg", ssr: true, width, height });
  try {
    chart.setOption(option);
    return chart.renderToSVGString();
  } finally {
    chart.dispose();
  }
}

/** Draws a ready board as PNG, 1080 wide, with a font of our own: the same board gives the same bytes on every machine. */
export async function drawReadyBoard(board: ReadyBoardPrint): Promise<Uint8Array> {
  const svg = await readyBoardSvg(board);
  // Off the event loop: a full board takes some 300 ms.
  const { renderAsync } = await import("@resvg/resvg-js");
  const image = await renderAsync(svg, { font: { loadSystemFonts: false, fontFiles, defaultFontFamily: FONT } });
  return image.asPng();
}

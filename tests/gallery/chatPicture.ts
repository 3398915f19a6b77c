import type { Card } from "../../bot/chat/types.ts";
import { attachFiles } from "../../bot/discord/attachFiles.ts";
import { type DrawnCard, drawCard } from "../../bot/discord/drawCard.ts";
import type { CalledOf } from "../../bot/discord/drawLine.ts";
import { clockText } from "../../bot/rehearsal/clockText.ts";
import { chatMarkup } from "./chatMarkup.ts";
import { paragraph } from "./paragraph.ts";
import { type Box, box, drawPicture } from "./picture.ts";
import type { Shown } from "./playedCards.ts";

/** The platform's dark theme on a phone: a message stands beside the sender's face. */
const WIDTH = 375;
const MARGIN = 12;
const FACE = 40;
const BODY = WIDTH - 2 * MARGIN - FACE - 12;
const PADDING = 12;
const INNER = BODY - 4 - 2 * PADDING;
const [back, panel, text, faint] = ["#1a1a1e", "#242429", "#dfe0e2", "#9b9ca3"];
const buttonColours: Readonly<Record<number, string>> = { 1: "#5865f2", 2: "#3a3a42", 4: "#d22d39" };

const byName: CalledOf = () => null;
const hex = (colour: number): string => `#${colour.toString(16).padStart(6, "0")}`;

/** What somebody saw, as the platform shows it on a phone. */
export async function chatPicture(shown: Shown, card: Card): Promise<Uint8Array> {
  const drawn = drawCard(card, "k7m2-4", byName);
  const head = box({ alignItems: "flex-end" }, [
    box({ fontSize: 16, fontWeight: 700, color: text, marginRight: 8 }, "Rangecall"),
    box({ fontSize: 12, color: faint }, `APP · ${clockText(shown.at, shown.zone, shown.at)}`),
  ]);
  const { files: attached = [] } = await attachFiles(card);
  const files = [...shown.files, ...attached].map(({ name }) =>
    box({ marginTop: 6, padding: "10px 12px", borderRadius: 8, backgroundColor: panel, color: "#6ca7f5", fontSize: 14 }, name),
  );
  const body = box({ flexDirection: "column", width: BODY, marginLeft: 12 }, [head, ...files, embedBox(drawn, shown), ...rowBoxes(drawn)]);
  const face = box({ width: FACE, height: FACE, borderRadius: FACE / 2, backgroundColor: "#2f855a" });
  return drawPicture([box({}, [face, body])], { marginPx: MARGIN, width: WIDTH, background: back });
}

function embedBox({ embeds: [embed] }: DrawnCard, shown: Shown): Box {
  const lines = chatMarkup(embed.description ?? "", shown).map(({ small, pieces }) => paragraph(pieces, small ? 12 : 14, small ? faint : text));
  const title = chatMarkup(embed.title ?? "", shown).map(({ pieces }) =>
    paragraph(
      pieces.map((piece) => ({ ...piece, bold: true })),
      16,
      text,
    ),
  );
  const footer = embed.footer === undefined ? [] : [box({ marginTop: 8, fontSize: 12, color: faint }, embed.footer.text)];
  return box({ marginTop: 4, borderRadius: 4, backgroundColor: panel }, [
    box({ width: 4, borderRadius: "4px 0 0 4px", backgroundColor: hex(embed.color ?? 0) }),
    box({ flexDirection: "column", width: INNER, padding: PADDING }, [...title, box({ height: 6 }), ...lines, ...footer]),
  ]);
}

/** Buttons wrap within their row; a list of choices takes the whole width. */
function rowBoxes({ components }: DrawnCard): readonly Box[] {
  return components.map((row) =>
    box(
      { flexWrap: "wrap", width: BODY },
      row.components.map((part) =>
        "options" in part
          ? box(
              { width: BODY - 26, marginTop: 8, padding: "11px 12px", borderRadius: 8, border: "1px solid #44444c", color: faint, fontSize: 15 },
              `${part.placeholder ?? ""}  ▾`,
            )
          : box(
              {
                margin: "8px 8px 0 0",
                padding: "8px 14px",
                borderRadius: 8,
                backgroundColor: buttonColours[part.style] ?? panel,
                color: "#ffffff",
                fontSize: 15,
                maxWidth: BODY - 28,
              },
              "label" in part ? (part.label ?? "") : "",
            ),
      ),
    ),
  );
}

import { eq } from "drizzle-orm";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { Reply } from "../../../bot/chat/types.ts";
import { formPages } from "../../../bot/replies/formPages.ts";
import { player } from "../../../db/schema/people.ts";
import { write } from "../../../db/write.ts";
import { DRIVER_NUMBER } from "../../support/builtDriver.ts";
import { type MemoryBot, openMemoryBot } from "../../support/memoryBot.ts";
import { akiko, maren, petra } from "../../support/people.ts";
import { cardOf, cardText, orderPost, venueTime } from "../../support/readCard.ts";

// fixtures/scenario/head-models.csv: Menhir is unreleased, its code word is lamplight; heads.csv: 0288 is its only head, 9 stamped.
let bot: MemoryBot;
beforeEach(async () => {
  bot = await openMemoryBot(venueTime("2027-05-03T10:30"));
});
afterEach(() => {
  expect(bot.bugs).toEqual([]);
  bot.close();
});

const everythingPosted = (): string =>
  ["plover-orders", "plover-bench"].flatMap((name) => bot.posts(name).map(({ card }) => JSON.stringify(card))).join();
const draftText = async (): Promise<string> => {
  await bot.settle();
  return cardText(orderPost(bot, DRIVER_NUMBER).card);
};

describe("an order by a model's code word", () => {
  const byMessage = (head: string) => bot.say(maren, `build oxtoby driver like gamer, ${head}, loft 9`);

  it.each(["head lamplight 9", "head LampLight", "lamplight 9"])(
    "takes %j of a message as the model, and shows the code word alone",
    async (head) => {
      await byMessage(head);
      expect(await draftText()).toMatch(/Head 0288 lamplight stamped 9/);
      expect(everythingPosted()).not.toMatch(/menhir/i);
    },
  );

  it("takes what the slash command offers", async () => {
    await bot.invoke(maren, "order new", { player: "Bram Oxtoby", club: "driver", like: "gamer", head: "lamplight", loft: "9" });
    expect(await draftText()).toMatch(/Head 0288 lamplight stamped 9/);
    expect(everythingPosted()).not.toMatch(/menhir/i);
  });

  it("takes it in the form", async () => {
    const answers = { player: "oxtoby", club: "driver", like: "gamer", head: "lamplight", loft: "9" };
    const begun = await bot.invoke(maren, "order form", {});
    await formPages.reduce(async (shown: Promise<Reply | null>, { parts }) => {
      const page = await shown;
      const form = page?.kind === "card" ? await bot.press(maren, page.card, "Next page") : page;
      if (form?.kind !== "form") throw new Error(`no page of the form: ${JSON.stringify(form)}`);
      const asked = Object.entries(answers).filter(([name]) => parts.some((part) => part.name === name));
      return bot.submit(maren, form.form.action, Object.fromEntries(asked));
    }, Promise.resolve(begun));
    expect(await draftText()).toMatch(/Head 0288 lamplight stamped 9/);
  });

  it("is refused to one who may not order", async () => {
    const card = cardOf(await bot.invoke(akiko, "order new", { player: "Bram Oxtoby", club: "driver", like: "gamer", head: "lamplight", loft: "9" }));
    expect(card.kind).toBe("refusal");
  });
});

describe("a restricted player's code word", () => {
  const NAME = "Tomas Ferreval";
  // fixtures/scenario/orders.csv: order 4 is Ferreval's.
  beforeEach(() => write(bot.db, (tx) => void tx.update(player).set({ restrictedCode: "harbour" }).where(eq(player.name, NAME)).run()));

  it("finds the player's order, and no answer says the name", async () => {
    expect(cardText(cardOf(await bot.invoke(maren, "where", { player: "Harbour" })))).toMatch(/^\d HARBOUR /);
    for (const typed of ["harbour", "harbor", "hrbr", "tomas"]) {
      for (const values of [{ player: typed }, { player: typed, club: "putter" }]) {
        const answers = [await bot.invoke(maren, "where", values), await bot.invoke(maren, "spec", values), await bot.invoke(akiko, "spec", values)];
        expect(JSON.stringify(answers)).not.toMatch(/ferreval/i);
      }
    }
  });

  it("orders for the player by message, misspelt or not, and posts the code word alone", async () => {
    await bot.say(maren, "build harbour driver like gamer, loft 9");
    expect(await draftText()).toMatch(/^\d HARBOUR /);
    await bot.say(maren, "build harbor driver like gamer, loft 9");
    await bot.say(maren, "build hrbr driver like gamer, loft 9");
    await bot.settle();
    expect(everythingPosted()).not.toMatch(/ferreval/i);
  });

  it("shows the spec to the lead", async () => {
    expect(cardText(cardOf(await bot.invoke(petra, "spec", { player: "harbour" })))).toContain(NAME);
    expect(cardOf(await bot.invoke(maren, "spec", { player: "harbour" })).title).toBe("harbour is restricted");
  });
});

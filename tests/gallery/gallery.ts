import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { basename, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import type { FileRecipe } from "../../bot/chat/types.ts";
import { calcViews } from "../../bot/flows/calc/calcViews.ts";
import { fileName } from "../../bot/prints/fileName.ts";
import { keepFilesIn } from "../../bot/rehearsal/keepFiles.ts";
import * as someBoards from "../bot/prints/ready/someBoards.ts";
import * as someSheets from "../bot/prints/someSheets.ts";
import { card } from "../bot/rehearsal/cards.ts";
import { cardPicture } from "./cardPicture.ts";
import { chatPicture } from "./chatPicture.ts";
import { galleryPage, MARK, type Pictured } from "./galleryPage.ts";
import { playedCards, type Shown } from "./playedCards.ts";

/** Every script that is played, each on a week of its own: those of fixtures, our own, and each example of each view of /calc. */
function scripts(): readonly string[] {
  const posts = fileURLToPath(new URL("../../fixtures/posts/", import.meta.url));
  const files = readdirSync(posts).filter((name) => name.endsWith(".txt"));
  const calc = Object.values(calcViews).flatMap(({ name, examples }) => [`/calc ${name}`, ...examples.map((text) => `/calc ${name} ${text}`)]);
  return [
    ...files.map((name) => readFileSync(join(posts, name), "utf8")),
    readFileSync(new URL("posts.txt", import.meta.url), "utf8"),
    ["/calc", ...calc, "/calc swnig d3", "/calc swing 99 in"].map((line) => line.replaceAll("\n", "\\\n")).join("\n"),
  ];
}

const kindOf = ({ content }: Shown): string => ("kind" in content ? content.kind : "form");

/** What can be seen of it: which order it is about and whether it was posted or edited makes it no other card. */
function visible({ content, files }: Shown): string {
  const { title } = content;
  if (!("kind" in content)) return JSON.stringify([title, content.parts]);
  const { kind, tone, lines, fields, buttons, choices } = content;
  const labels = [buttons.map(({ label }) => label), choices?.items.map(({ label }) => label)];
  return JSON.stringify([kind, title, tone, lines, fields, labels, files.map(({ name }) => name)]);
}

/** An empty folder, or that of an earlier gallery with what it held taken away. */
function emptied(folder: string): boolean {
  const page = join(folder, "index.html");
  if (existsSync(folder) && readdirSync(folder).length > 0 && !(existsSync(page) && readFileSync(page, "utf8").includes(MARK))) {
    return false;
  }
  for (const part of ["cards", "chat", "files", "index.html", "chat.html"]) rmSync(join(folder, part), { recursive: true, force: true });
  for (const part of ["cards", "chat"]) mkdirSync(join(folder, part), { recursive: true });
  return true;
}

async function writePages(folder: string, pictured: readonly Pictured[], inChat: readonly Pictured[]): Promise<void> {
  const files: readonly FileRecipe[] = [
    ...Object.entries(someSheets).map(([name, sheet]) => ({ name: `sample-${name}.pdf`, draw: "sheet" as const, sheet })),
    ...Object.entries(someBoards).map(([name, board]) => ({ name: `sample-${name}.png`, draw: "readyBoard" as const, board })),
  ];
  const samples = (await keepFilesIn(() => join(folder, "files"))(card("samples", { files }))).map(({ path }) => `files/${basename(path)}`);
  const plain = { heading: "Every card, as a phone shows it", other: { page: "chat.html", name: "In the chat" } };
  const chat = { heading: "Every card, in the chat", other: { page: "index.html", name: "By themselves" } };
  writeFileSync(join(folder, "index.html"), galleryPage(pictured, samples, plain));
  writeFileSync(join(folder, "chat.html"), galleryPage(inChat, [], chat));
}

async function draw(folder: string): Promise<string> {
  const seen = new Map<string, Shown>();
  for (const script of scripts()) {
    for (const shown of await playedCards(script, join(folder, "files"))) {
      if (!seen.has(visible(shown))) seen.set(visible(shown), shown);
    }
  }
  const pictured: Pictured[] = [];
  const inChat: Pictured[] = [];
  for (const [index, shown] of [...seen.values()].entries()) {
    const name = `${String(index + 1).padStart(3, "0")}-${fileName(kindOf(shown))}.png`;
    const files = shown.files.map(({ path }) => `files/${basename(path)}`);
    const facts = { kind: kindOf(shown), title: shown.content.title, files };
    writeFileSync(join(folder, "cards", name), await cardPicture(shown));
    pictured.push({ ...facts, picture: `cards/${name}` });
    if ("kind" in shown.content) {
      writeFileSync(join(folder, "chat", name), await chatPicture(shown, shown.content));
      inChat.push({ ...facts, picture: `chat/${name}` });
    }
  }
  await writePages(folder, pictured, inChat);
  const kinds = new Set(pictured.map(({ kind }) => kind)).size;
  return `${pictured.length} cards of ${kinds} kinds, ${readdirSync(join(folder, "files")).length} files and index.html in ${folder}`;
}

const folder = resolve(process.argv[2] ?? "gallery");
if (emptied(folder)) {
  process.stdout.write(`${await draw(folder)}\n`);
} else {
  process.stderr.write(`${folder} is not empty and holds no gallery\n`);
  process.exitCode = 2;
}

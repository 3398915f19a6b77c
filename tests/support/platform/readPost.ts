import type { Platform } from "./platform.ts";
import type { Said } from "./store.ts";

/** What people read of a message: its text without the platform's escapes, and its buttons. */
export interface Read {
  readonly title: string;
  readonly text: string;
  readonly buttons: readonly string[];
}

interface Shown {
  readonly embeds?: unknown;
  readonly components?: unknown;
}
interface Embed {
  readonly title?: string;
  readonly description?: string;
  readonly fields?: readonly { readonly name: string; readonly value: string }[];
}

const plain = (text: string): string => text.replaceAll("**", "").replace(/\\([^\w\s])/g, "$1");

export function readPost({ embeds, components }: Shown): Read {
  const [embed = {}] = (embeds ?? []) as readonly Embed[];
  const rows = (components ?? []) as readonly { readonly components: readonly { readonly label?: string }[] }[];
  const fields = (embed.fields ?? []).map(({ name, value }) => `${name}: ${value}`);
  return {
    title: plain(embed.title ?? ""),
    text: plain([embed.description ?? "", ...fields].join("\n")),
    buttons: rows.flatMap((row) => row.components.flatMap(({ label }) => label ?? [])),
  };
}

/** Waits for a post of the bot in a channel whose title or text fits. */
export const postIn = (platform: Platform, channel: string, fits: RegExp): Promise<Said> =>
  platform.until(
    () =>
      platform.posts(channel).find((said) => {
        const { title, text } = readPost(said);
        return fits.test(title) || fits.test(text);
      }),
    `a post in ${channel} that fits ${fits}`,
  );

/** How many posts of the bot in a channel fit. */
export const countIn = (platform: Platform, channel: string, fits: RegExp): number =>
  platform.posts(channel).filter((said) => fits.test(readPost(said).title) || fits.test(readPost(said).text)).length;

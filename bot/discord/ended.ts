/**
 * Why the bot is out of the chat: told to stop, the line is gone (a new process may get in), or something in the settings
 * of bot or chat has to be mended first.
 */
export interface Ended {
  readonly kind: "stopped" | "lost" | "settings";
  readonly why: string;
}

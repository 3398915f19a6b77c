/** What the platform answers a request with. */
export interface Answered {
  readonly status: number;
  readonly body?: unknown;
  readonly headers?: Readonly<Record<string, string>>;
}

export const ok = (body: unknown): Answered => ({ status: 200, body });
export const nothing: Answered = { status: 204 };
export const refused = (status: number, code: number, message: string, more: Readonly<Record<string, unknown>> = {}): Answered => ({
  status,
  body: { code, message, ...more },
});

/** The package holds these without types. */
declare module "discord-api-spec/zod" {
  interface Issue {
    readonly path: readonly PropertyKey[];
    readonly message: string;
  }
  interface Schema {
    readonly safeParse: (body: unknown) => { readonly success: boolean; readonly error?: { readonly issues: readonly Issue[] } };
  }
  export const ApplicationCommandAutocompleteCallbackRequestSchema: Schema;
  export const ApplicationCommandUpdateRequestSchema: Schema;
  export const CreateMessageInteractionCallbackRequestSchema: Schema;
  export const IncomingWebhookUpdateRequestPartialSchema: Schema;
  export const MessageCreateRequestSchema: Schema;
  export const MessageEditRequestPartialSchema: Schema;
  export const ModalInteractionCallbackRequestSchema: Schema;
  export const UpdateMessageInteractionCallbackRequestSchema: Schema;
}

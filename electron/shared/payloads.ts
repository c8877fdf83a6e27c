import { z } from "zod";
import { channels, type Channel } from "./channels.ts";
import { isTidyFileName } from "./file-name.ts";

/** Longest text that crosses, in characters; a project with years of logged hours stays far below. */
export const longestText = 64 * 1024 * 1024;

const nothing = z.undefined();
const text = z.string().max(longestText);
const handle = z.uuid();
const fileName = z.string().max(120).refine(isTidyFileName, "a plain file name, without folders");

/** What each channel takes. Anything else is refused before it is looked at. */
export const payloads = {
  [channels.openProject]: nothing,
  [channels.saveProject]: z.strictObject({
    handle: handle.nullable(),
    text,
    suggestedName: fileName,
    saveAs: z.boolean(),
  }),
  [channels.openWeather]: nothing,
  [channels.saveText]: z.strictObject({
    suggestedName: fileName,
    text,
    type: z.string().regex(/^[a-z]+\/[a-z0-9.+-]{1,60}$/, "a media type"),
  }),
  [channels.savePdf]: z.strictObject({ suggestedName: fileName }),
  [channels.recent]: nothing,
  [channels.openRecent]: z.strictObject({ handle }),
  [channels.journalWrite]: z.strictObject({ text }),
  [channels.journalRead]: nothing,
  [channels.journalClear]: nothing,
  [channels.dirty]: z.strictObject({ dirty: z.boolean(), title: z.string().max(200) }),
  [channels.progress]: z.strictObject({ fraction: z.number().min(0).max(1).nullable() }),
  [channels.listening]: nothing,
} as const satisfies Readonly<Record<Channel, z.ZodType>>;

export type Payload<C extends Channel> = z.infer<(typeof payloads)[C]>;

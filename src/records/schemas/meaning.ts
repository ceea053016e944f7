/**
 * What a key means, said beside the key: docs/records.md and the schemas that editors complete and check by are printed
 * from here. An example is YAML as it stands behind the colon, and a test reads each.
 */
import type * as z from "zod";

/** Who may see what stands there: viewers, as long as nothing keeps it back, or the person alone. */
export type SeenBy = "viewers" | "you";

declare module "zod" {
  interface GlobalMeta {
    readonly example?: string | undefined;
    readonly seenBy?: SeenBy | undefined;
    /** The words that a value may be, where they are few. */
    readonly words?: readonly string[] | undefined;
  }
}

export function forViewers<Schema extends z.ZodType>(means: string, example: string, schema: Schema): Schema {
  return schema.meta({ description: means, example, seenBy: "viewers" });
}

export function forYou<Schema extends z.ZodType>(means: string, example: string, schema: Schema): Schema {
  return schema.meta({ description: means, example, seenBy: "you" });
}

// Takes: the records and a folder of photo files.
// Gives: photos with their day and place, what is wrong with them, measures, and copies for the pages without a trace of where they were taken.
// Never: changes or moves a photo that lies in the records, or lets a position out.
export { BroughtInList } from "./brought-in-list.ts";
export { findBursts } from "./bursts.ts";
export { type Card, cutCards } from "./card-copies.ts";
export { clipFacts } from "./clip-facts.ts";
export { type ComparisonOptions, publishComparisons } from "./comparison-copies.ts";
export { sameWeekDays } from "./comparison-frames.ts";
export type { PublishedFile, PublishedPhoto } from "./copy-cache.ts";
export { type CopyFormat, pageWidths, panoramaRatio, pixelLimit } from "./copy-recipe.ts";
export { creditXmp, onlyCredit } from "./credit-line.ts";
export { coverSeries, heightSeries } from "./garden-series.ts";
export { type AlignedViewpoint, type MeasuredGarden, type MeasureOptions, measureGrowth } from "./growth-of-garden.ts";
export { type GrowthStep, toldCover, weeklyGrowth } from "./growth-series.ts";
export { imageKind } from "./image-kind.ts";
export {
  type BroughtIn,
  type IngestOptions,
  type IngestSummary,
  ingestFolder,
  ingestPhotos,
} from "./ingest.ts";
export { openPhotoStore, type PhotoSource, type PhotoStore, type SourceFile } from "./ingest-files.ts";
export { isLoss, isSound, type LeftReason } from "./ingest-kinds.ts";
export { imageMetadataBlocks, type MetadataBlock } from "./metadata-blocks.ts";
export { openPhotoFolder, type PhotoFolder } from "./photo-folder.ts";
export { type PublishedPhotos, type PublishOptions, publishPhotos } from "./publish-copies.ts";
export { readPhotos } from "./read-photos.ts";
export { recordsOfMoments } from "./records-of-moments.ts";
export { filmFrame, NoFilmProgram } from "./still-frame.ts";
export { type LapseOptions, publishTimeLapses, type TimeLapse } from "./time-lapses.ts";
export { viewpointFileName, viewpointInName } from "./viewpoint-file-name.ts";
export { type VoiceNote, waitingVoices } from "./voice-notes.ts";

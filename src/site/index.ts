// Takes: the garden, copies of its photos, and finished briefs.
// Gives: the brief as one printable page, the public site and the private field pages as folders, and a server to look at them.
// Never does: let anything private into a public page, or put a half-made site in place of a whole one.
export { briefPage, type Printing } from "./brief-page.ts";
export { type BuildOptions, type BuiltSites, buildSites, PrivacyBreach, refusePlace } from "./build-sites.ts";
export type { CardPictures } from "./cards-page.ts";
export { type FieldList, picturesWanted } from "./field-list/field-list-data.ts";
export { fieldListPage } from "./field-list/field-list-page.ts";
export { fieldPictures } from "./field-list/field-pictures.ts";
export { makeFieldList } from "./field-list/make-field-list.ts";
export type { ServeAt } from "./live-server.ts";
export { type LiveBrief, type LiveMaterials, type LiveSites, serveLiveSites } from "./live-sites.ts";
export type { NoteOfDay, NoteWriting, ShownLine, WritingAnswer, WritingAsk } from "./note-writing.ts";
export type { OutdoorAnswer, OutdoorLine, OutdoorPhoto, OutdoorTaking } from "./outdoors-taking.ts";
export { ForeignFiles } from "./own-files.ts";
export type { NamingAsk, PhotoNaming } from "./photo-naming.ts";
export type { PhotoAsk, PhotoTaking } from "./photo-taking.ts";
export { type Breach, gatePublicFolder } from "./privacy-gate.ts";
export { type EpisodeCaptions, type FilmTexts, publicCaptions } from "./public-captions.ts";
export { privacyHints, publicGarden } from "./public-garden.ts";
export { PublishRunning } from "./publish-lock.ts";
export type { AnsweringAsk, QuestionAnswering } from "./question-answering.ts";
export { recapDocument } from "./recap-page.ts";
export { type StaticServer, serveFolder } from "./static-server.ts";
export type { ThingAsk, ThingAsking } from "./thing-asking.ts";
export {
  type Gone,
  goneFromView,
  type KeptBack,
  keptBackAsBefore,
  lastSeen,
  type Seen,
  whatViewersSee,
} from "./what-viewers-see.ts";
export type { TapAnswer, Workbench } from "./workbench.ts";

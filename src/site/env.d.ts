/// <reference types="astro/client" />

declare module "virtual:public-site" {
  const site: import("./page-data/shapes.ts").PublicSite;
  export default site;
}

declare module "virtual:field-site" {
  const site: import("./page-data/shapes.ts").FieldSite;
  export default site;
}

declare module "virtual:words" {
  const words: import("./words/index.ts").Words;
  export default words;
}

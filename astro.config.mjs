import { defineConfig } from "astro/config";

/** For editors and "astro check" only: sites are built by src/site/build-sites.ts, which brings its own settings. */
export default defineConfig({ srcDir: "./src/site/public" });

import site from "virtual:public-site";

/** The variety list to download. */
export function GET(): Response {
  return new Response(site.csv, { headers: { "content-type": "text/csv; charset=utf-8" } });
}

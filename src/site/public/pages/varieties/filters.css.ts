import site from "virtual:public-site";

/** The rules that let the choices of this garden's variety list work without scripts. */
export function GET(): Response {
  return new Response(site.filterRules, { headers: { "content-type": "text/css; charset=utf-8" } });
}

import site from "virtual:field-site";

/** The schemes that parts of the style page wear, and one example for each token. */
export function GET(): Response {
  return new Response(site.looks.css, { headers: { "content-type": "text/css; charset=utf-8" } });
}

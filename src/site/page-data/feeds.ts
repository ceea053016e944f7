/** Feeds of what came out, for readers' own programs: RSS 2.0 and JSON Feed 1.1, newest first. */
import type { Day } from "../../model.ts";
import { storyHtml } from "../story-html.ts";
import { episodeCard } from "./episode-pages.ts";
import { seasonsWithFigures } from "./recap-pages.ts";
import type { RecapPage } from "./recap-shapes.ts";
import type { SiteFile } from "./shapes.ts";
import { webAddress } from "./sources.ts";
import { episodesInOrder, type View } from "./view.ts";

interface FeedItem {
  readonly title: string;
  /** Complete address of its page. */
  readonly page: string;
  /** Where the film itself is. */
  readonly film?: string | undefined;
  readonly day: Day;
  /** One sentence or two. */
  readonly summary: string;
  /** Safe HTML. */
  readonly html: string;
  /** Complete address. */
  readonly picture?: string | undefined;
}

/**
 * Both feeds; none without the garden's address, because a feed is read far from the site. `recaps` are the pages of the
 * seasons with news, in their order.
 */
export function feeds(view: View, recaps: () => readonly RecapPage[]): readonly SiteFile[] {
  const { settings } = view.garden;
  if (settings.address === undefined) return [];
  const items = [...films(view, settings.address), ...seasons(view, settings.address, recaps())].sort((a, b) =>
    a.day > b.day ? -1 : a.day < b.day ? 1 : a.page < b.page ? -1 : 1,
  );
  const home = settings.address + view.links.home;
  const channel: Channel = {
    name: settings.name,
    language: view.locale.tag,
    about: view.words.sentences.film.feed(settings.name),
  };
  return [
    { path: "feed.xml", text: rss(channel, home, items) },
    { path: "feed.json", text: jsonFeed(channel, home, items) },
  ];
}

function films(view: View, address: string): readonly FeedItem[] {
  return episodesInOrder(view.garden).map((episode) => {
    const { text, picture } = episodeCard(view, episode);
    return {
      title: episode.title,
      page: address + view.links.episode(episode.id),
      film: webAddress(episode.link),
      day: episode.published ?? episode.day,
      summary: text,
      html: storyHtml(episode.body),
      picture: picture === undefined ? undefined : address + picture.src,
    };
  });
}

/** A season is news once, when it is over; until then its page changes by the day. */
function seasons(view: View, address: string, recaps: readonly RecapPage[]): readonly FeedItem[] {
  return seasonsWithFigures(view).flatMap(({ to }, index) => {
    const recap = recaps[index];
    if (recap === undefined || to >= view.today) return [];
    return [{ title: recap.title, page: address + recap.href, day: to, summary: recap.paragraph, html: "" }];
  });
}

interface Channel {
  readonly name: string;
  readonly language: string;
  readonly about: string;
}

function rss({ name, language, about }: Channel, home: string, items: readonly FeedItem[]): string {
  const entries = items.map(
    (item) => `    <item>
      <title>${xml(item.title)}</title>
      <link>${xml(item.page)}</link>
      <guid isPermaLink="true">${xml(item.page)}</guid>
      <pubDate>${new Date(noon(item.day)).toUTCString().replace("GMT", "+0000")}</pubDate>
      <description>${xml(`<p>${xml(item.summary)}</p>${item.html}`)}</description>
    </item>
`,
  );
  return `<?xml version="1.0" encoding="UTF-8"?>
<rss version="2.0" xmlns:atom="http://www.w3.org/2005/Atom">
  <channel>
    <title>${xml(name)}</title>
    <link>${xml(home)}</link>
    <atom:link href="${xml(`${home}feed.xml`)}" rel="self" type="application/rss+xml"/>
    <description>${xml(about)}</description>
    <language>${xml(language)}</language>
${entries.join("")}  </channel>
</rss>
`;
}

function jsonFeed({ name, language }: Channel, home: string, items: readonly FeedItem[]): string {
  const feed = {
    version: "https://jsonfeed.org/version/1.1",
    title: name,
    home_page_url: home,
    feed_url: `${home}feed.json`,
    language,
    items: items.map((item) => ({
      id: item.page,
      url: item.page,
      external_url: item.film,
      title: item.title,
      summary: item.summary,
      content_html: `<p>${xml(item.summary)}</p>${item.html}`,
      image: item.picture,
      date_published: noon(item.day),
    })),
  };
  return `${JSON.stringify(feed, null, 2)}\n`;
}

/** A day has no hour; at noon UTC it is the same day for nearly everybody. */
function noon(day: Day): string {
  return `${day}T12:00:00Z`;
}

/** Characters that XML 1.0 knows no way to write are left out. */
function xml(text: string): string {
  return text
    .replace(/[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, "")
    .replace(/[<>&"']/gu, (character) => `&#${character.codePointAt(0)};`);
}

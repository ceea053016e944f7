/**
 * Towns of islands that are too small for the table of towns, and the only ones there that anybody would name. Positions from
 * memory, to a twentieth of a degree, which moves sunrise by seconds.
 */
import { readTowns, type Town } from "./towns.ts";

const rows = `
Kirkwall	GB	SCT	10	58.98	-2.96
Stromness	GB	SCT	2	58.96	-3.3
Lerwick	GB	SCT	7	60.15	-1.14
Stornoway	GB	SCT	7	58.21	-6.39
Portree	GB	SCT	2	57.41	-6.19
Tobermory	GB	SCT	1	56.62	-6.07
Bowmore	GB	SCT	1	55.76	-6.29
Brodick	GB	SCT	1	55.58	-5.15
Rothesay	GB	SCT	5	55.84	-5.06
Holyhead	GB	WLS	12	53.31	-4.63
Hugh Town	GB	ENG	1	49.92	-6.31
Ryde	GB	ENG	17	50.73	-1.16
Saint Peter Port	GG		17	49.46	-2.54
Stanley	FK		2	-51.7	-57.85
Nantucket	US	MA	14	41.28	-70.1
Friday Harbor	US	WA	2	48.53	-123.02
`;

export function islandTowns(): readonly Town[] {
  return readTowns(rows);
}

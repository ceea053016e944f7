/** docs/commands.md: the command reference, from the commands' own help. */

import { realEffects } from "../../src/cli/effects.ts";
import { commands } from "../../src/cli/main.ts";

export function commandsPage(): string {
  const program = commands(realEffects(), () => undefined);
  const sections = program.commands.map((command) => {
    const help = command.configureHelp({ helpWidth: 100 }).helpInformation().trimEnd();
    return `## plotreel ${command.name()}\n\n\`\`\`\n${help}\n\`\`\`\n`;
  });
  return `# The commands

Printed from the commands' own help by \`npm run docs\`. Inside the project a command is called as \`npx plotreel …\`.
Exit codes: 0 done, 1 problems found in the records, 2 wrong use, 3 could not.

${sections.join("\n")}`;
}

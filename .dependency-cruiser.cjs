/** Who may import whom. Type imports count too. */
module.exports = {
  forbidden: [
    { name: "no-cycles", severity: "error", from: {}, to: { circular: true } },
    { name: "core-stands-alone", severity: "error", from: { path: "^core/" }, to: { pathNot: "^(core/|node_modules/(pure-rand|munkres)/)" } },
    {
      name: "db-knows-core-only",
      severity: "error",
      from: { path: "^db/" },
      to: { path: "^(bot|tests)/" },
    },
    {
      name: "only-the-root-opens-the-database",
      severity: "error",
      from: { path: "^bot/", pathNot: "^bot/(main|doctor)\\.ts$" },
      to: { path: "^db/open\\.ts$" },
    },
    {
      name: "no-command-imports-another",
      severity: "error",
      from: { path: "^bot/commands/([^/]+)\\.ts$" },
      to: { path: "^bot/commands/", pathNot: "^bot/commands/$1\\.ts$" },
    },
    {
      name: "chat-is-neutral",
      severity: "error",
      from: { path: "^bot/(chat|desk|operations|replies|commands|boundary|reminders|outbox)/" },
      to: { path: "^(bot/(discord|rehearsal)/|node_modules/discord\\.js/)" },
    },
    { name: "wording-knows-no-database", severity: "error", from: { path: "^bot/replies/" }, to: { path: "^db/" } },
    { name: "operations-have-no-wording", severity: "error", from: { path: "^bot/operations/" }, to: { path: "^bot/(replies|commands|desk)/" } },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.json" },
    enhancedResolveOptions: { exportsFields: ["exports"], conditionNames: ["import", "node", "default"] },
  },
};

/**
 * The environment a part of the service gets: ours and its own, without what npm adds, and without the addresses that
 * only the starter may use.
 */
export function childEnv(
  ours: Readonly<Record<string, string | undefined>>,
  own: Readonly<Record<string, string>>,
): Record<string, string> {
  const kept: Record<string, string> = {};
  for (const [name, value] of Object.entries(ours)) {
    const isForUs =
      /^npm_/i.test(name) || ['DATABASE_OWNER_URL', 'DATABASE_URL', 'QUEUE_DATABASE_URL'].includes(name);
    if (value !== undefined && !isForUs) kept[name] = value;
  }
  return { ...kept, NODE_ENV: 'production', NEXT_TELEMETRY_DISABLED: '1', ...own };
}

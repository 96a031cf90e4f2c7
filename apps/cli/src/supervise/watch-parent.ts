// Loaded into api, worker and site before their own code: when the process that started them is gone, the channel
// to it closes, and they stop as they would on SIGTERM; what does not stop in ten seconds ends anyway.
const graceMs = 10_000;

process.on('disconnect', () => {
  process.kill(process.pid, 'SIGTERM');
  setTimeout(() => process.exit(1), graceMs).unref();
});
// The channel alone must not keep a finished process alive.
process.channel?.unref();

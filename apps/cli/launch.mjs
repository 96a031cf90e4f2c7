// Plain JavaScript without dependencies, and without syntax that an old Node could not even read:
// it must be able to say that Node is too old.
const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);

if (major < 20 || (major === 20 && minor < 19)) {
  console.error(`ballfirst: Node 20.19 or newer is needed, and this is Node ${process.versions.node}.`);
  process.exitCode = 1;
} else {
  import('./launch/run.mjs').then((launcher) => launcher.run(process.argv.slice(2)));
}

// Imported first by every command: an old Node gets one sentence instead of a stack trace.
const [major, minor] = process.versions.node.split('.').map(Number);

if (major < 20 || (major === 20 && minor < 19)) {
  console.error(
    `Loopwright needs Node 20.19 or newer, and this is ${process.versions.node}. Run it with a newer one: npx -y -p node@24 npm ${process.env.npm_lifecycle_event ?? 'start'}`,
  );
  process.exit(1);
}

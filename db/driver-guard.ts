// Imported before the driver, since the driver's binary kills an older Node without a word.
if (Number(process.versions.napi) < 10) {
  throw new Error(`This Node (${process.version}) is too old for the shop's database: start it with npm, which picks the right one.`);
}

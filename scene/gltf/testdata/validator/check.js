// Prints what the Khronos glTF validator finds in the files named, a line of
// JSON each: {"file", "errors", "warnings", "infos", "hints", "messages"}.
const fs = require("fs");
const validator = require("gltf-validator");

(async () => {
  for (const file of process.argv.slice(2)) {
    const report = await validator.validateBytes(new Uint8Array(fs.readFileSync(file)), { uri: file });
    const { numErrors, numWarnings, numInfos, numHints, messages } = report.issues;
    console.log(JSON.stringify({ file, errors: numErrors, warnings: numWarnings, infos: numInfos, hints: numHints, messages }));
  }
})().catch((fault) => {
  console.error(fault);
  process.exit(1);
});

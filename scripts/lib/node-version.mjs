// @ts-check
// Imported first by every script: says so when Node is too old, before anything newer is used.

export const OLDEST = { major: 20, minor: 19 };

/**
 * The complaint about a Node that is too old, or null when it will do.
 * @param {string} version as in `process.versions.node`
 * @returns {string | null}
 */
export const complaintAbout = (version) => {
  const parts = version.split('.').map(Number);
  const major = parts[0] || 0;
  const minor = parts[1] || 0;
  const enough = major > OLDEST.major || (major === OLDEST.major && minor >= OLDEST.minor);
  if (enough) return null;
  return (
    `Dryflat needs Node ${OLDEST.major}.${OLDEST.minor} or newer, and this is Node ${version}. ` +
    'Install a newer Node and run the same command again.'
  );
};

const complaint = complaintAbout(process.versions.node);
if (complaint !== null) {
  console.error(complaint);
  process.exit(1);
}

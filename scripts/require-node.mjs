import { giveUp } from './project.mjs';

/** The oldest release in each line of Node that the build tool runs on. */
const OLDEST = [
  { major: 20, minor: 19 },
  { major: 22, minor: 12 },
];

/** @param {string} version as process.versions.node gives it */
export const isNodeRecentEnough = (version) => {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  const line = OLDEST.find((oldest) => oldest.major === major);
  return line ? minor >= line.minor : major > Math.max(...OLDEST.map((oldest) => oldest.major));
};

export const requireNode = () => {
  if (!isNodeRecentEnough(process.versions.node))
    giveUp(
      `Ballast needs Node 20.19 or later (in the 22 line 22.12 or later); this is Node ${process.versions.node}: ` +
        'install a newer Node and give the same command again.',
    );
};

import { ensureBuilt } from './ensure-built.mjs';

/** Tests that start the built programs start today's. */
export default ensureBuilt;

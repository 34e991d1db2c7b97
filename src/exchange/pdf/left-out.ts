/**
 * What stands in a build in place of the parts of the PDF library that turn markup into pages: nothing of ours asks for
 * them, and no build carries them (see `resolve.alias` in the configuration of the build).
 */
export default undefined;

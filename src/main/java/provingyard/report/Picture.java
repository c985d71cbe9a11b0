package provingyard.report;

/**
 * A chart, drawn twice so that its letters can be read everywhere.
 *
 * @param wide PNG for wide screens and paper
 * @param narrow PNG for narrow screens
 */
record Picture(byte[] wide, byte[] narrow) {}

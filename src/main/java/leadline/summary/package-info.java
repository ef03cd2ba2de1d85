/**
 * The published tables: for each, one specification and one mergeable tally. The specification is
 * the single source for the lake's codec, the published files, the data package and the docs.
 */
@NullMarked
package leadline.summary;

import org.jspecify.annotations.NullMarked;

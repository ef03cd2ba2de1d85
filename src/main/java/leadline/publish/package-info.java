/**
 * The published files of a month: tables as CSV and Parquet, their data package, the run's
 * manifest, and the links by which readers find the newest month.
 */
@NullMarked
package leadline.publish;

import org.jspecify.annotations.NullMarked;

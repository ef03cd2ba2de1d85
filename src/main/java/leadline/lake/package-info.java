/**
 * The lake: Iceberg tables of Parquet files in which records and results are kept, the list of
 * committed batches and runs that makes them visible, and the tasks that read and write them.
 */
@NullMarked
package leadline.lake;

import org.jspecify.annotations.NullMarked;

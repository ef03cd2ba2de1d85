/** Where a fact came from: the file's digest and name, the line, the column, the batch. */
@NullMarked
package leadline.origin;

import org.jspecify.annotations.NullMarked;

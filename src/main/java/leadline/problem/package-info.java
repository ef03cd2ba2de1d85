/** Problems of the data, each a small record with its evidence and where it came from. */
@NullMarked
package leadline.problem;

import org.jspecify.annotations.NullMarked;

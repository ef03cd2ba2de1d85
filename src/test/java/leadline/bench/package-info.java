/** What the program's cost is measured against. */
@NullMarked
package leadline.bench;

import org.jspecify.annotations.NullMarked;

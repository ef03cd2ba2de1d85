/** The packaged program, run as its users run it: as processes of its own. */
@NullMarked
package leadline.packaging;

import org.jspecify.annotations.NullMarked;

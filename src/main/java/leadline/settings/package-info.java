/** The catalogue and the job files: read, checked, and every error reported at once. */
@NullMarked
package leadline.settings;

import org.jspecify.annotations.NullMarked;

/** The jobs, one class for each step: read, call pure code, write. */
@NullMarked
package leadline.job;

import org.jspecify.annotations.NullMarked;

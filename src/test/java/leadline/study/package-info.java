/** Simulations that show what the limits of the statistics are worth. */
@NullMarked
package leadline.study;

import org.jspecify.annotations.NullMarked;

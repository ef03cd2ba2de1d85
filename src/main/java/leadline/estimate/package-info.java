/**
 * One estimator on a plain CSV file, its results as one flat JSON object; {@link Methods} lists
 * them.
 */
@NullMarked
package leadline.estimate;

import org.jspecify.annotations.NullMarked;

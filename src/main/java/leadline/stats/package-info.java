/**
 * Estimators of rates, shares and durations with their limits, on plain numbers in whatever unit
 * the caller keeps to. A result that the data do not support is an empty optional, never NaN.
 */
@NullMarked
package leadline.stats;

import org.jspecify.annotations.NullMarked;

/** Quantities with their unit in the type: running hours, moments, limits. */
@NullMarked
package leadline.quantity;

import org.jspecify.annotations.NullMarked;

@NullMarked
package leadline.quantity;

import org.jspecify.annotations.NullMarked;

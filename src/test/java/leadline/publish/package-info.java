@NullMarked
package leadline.publish;

import org.jspecify.annotations.NullMarked;

@NullMarked
package leadline.page;

import org.jspecify.annotations.NullMarked;

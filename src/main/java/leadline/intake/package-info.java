/** Exports of the vessels: bytes in; stored rows, refused rows and unusable files out. */
@NullMarked
package leadline.intake;

import org.jspecify.annotations.NullMarked;

/** The commands: words in, exit codes out. No type of the engine in any signature. */
@NullMarked
package leadline.cli;

import org.jspecify.annotations.NullMarked;

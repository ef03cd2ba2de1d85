package leadline.origin;

import java.io.Serializable;

/**
 * The row a fact came from.
 *
 * @param file the file's path below the inbox, for people
 * @param digest the file's digest, which tells two files of one name apart
 * @param line the physical line on which the row begins, from 1
 */
public record Origin(String file, FileDigest digest, long line) implements Serializable {

  public Origin {
    if (line < 1) {
      throw new IllegalArgumentException("lines are numbered from 1, not " + line);
    }
  }

  @Override
  public String toString() {
    return file + " line " + line;
  }
}

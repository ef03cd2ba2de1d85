package leadline.publish;

import java.nio.charset.StandardCharsets;
import leadline.origin.FileDigest;

/** A vessel in the names of files. */
public final class VesselFile {

  private static final int LONGEST_NAME = 60;

  private VesselFile() {}

  /** Vessels come from exports, so a name may hold what no file name can. */
  public static String name(String vessel) {
    String plain = vessel.replaceAll("[^\\p{L}\\p{N}.-]", "-");
    if (!plain.equals(vessel) || plain.length() > LONGEST_NAME) {
      String digest = FileDigest.of(vessel.getBytes(StandardCharsets.UTF_8)).hex().substring(0, 8);
      plain = plain.substring(0, Math.min(plain.length(), LONGEST_NAME)) + "-" + digest;
    }
    return plain;
  }
}

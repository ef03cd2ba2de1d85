package leadline.origin;

import java.io.IOException;
import java.io.InputStream;
import java.io.Serializable;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The SHA-256 of a file's bytes, in 64 lower-case hexadecimal digits. */
public record FileDigest(String hex) implements Comparable<FileDigest>, Serializable {

  public FileDigest {
    if (!hex.matches("[0-9a-f]{64}")) {
      throw new IllegalArgumentException("not a SHA-256 digest: " + hex);
    }
  }

  public static FileDigest of(Path file) throws IOException {
    MessageDigest digest = sha256();
    try (InputStream bytes = Files.newInputStream(file)) {
      byte[] buffer = new byte[1 << 16];
      for (int read = bytes.read(buffer); read >= 0; read = bytes.read(buffer)) {
        digest.update(buffer, 0, read);
      }
    }
    return new FileDigest(HexFormat.of().formatHex(digest.digest()));
  }

  public static FileDigest of(byte[] bytes) {
    return new FileDigest(HexFormat.of().formatHex(sha256().digest(bytes)));
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  @Override
  public int compareTo(FileDigest other) {
    return hex.compareTo(other.hex);
  }
}

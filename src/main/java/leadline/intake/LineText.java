package leadline.intake;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import leadline.problem.LineFault;

/**
 * The text of a line's bytes.
 *
 * @param text NUL and bytes that are not UTF-8 are shown as {@code \xNN}
 */
record LineText(String text, List<LineFault> faults) {

  private static final HexFormat HEX = HexFormat.of().withUpperCase();
  private static final char REPLACEMENT = '\uFFFD';
  private static final String VISIBLE_NUL = "\\x00";
  private static final int EXCERPT_BEFORE = 20;
  private static final int EXCERPT_AFTER = 20;

  static LineText of(byte[] bytes, int from, int to) {
    String text = new String(bytes, from, to - from, StandardCharsets.UTF_8);
    if (text.indexOf(REPLACEMENT) < 0 && text.indexOf('\0') < 0) {
      return new LineText(text, List.of());
    }
    return withCare(ByteBuffer.wrap(bytes, from, to - from));
  }

  private static LineText withCare(ByteBuffer bytes) {
    List<LineFault> faults = new ArrayList<>();
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    StringBuilder text = new StringBuilder(bytes.remaining());
    CharBuffer decoded = CharBuffer.allocate(bytes.remaining() + 1);
    int firstFault = -1;
    CoderResult result = decoder.decode(bytes, decoded, true);
    while (result.isError()) {
      text.append(decoded.flip());
      decoded.clear();
      firstFault = firstFault < 0 ? text.length() : firstFault;
      for (int i = 0; i < result.length(); i++) {
        HEX.toHexDigits(text.append("\\x"), bytes.get());
      }
      result = decoder.decode(bytes, decoded, true);
    }
    text.append(decoded.flip());
    if (firstFault >= 0) {
      faults.add(
          new LineFault.NotUtf8(
              text.substring(
                  Math.max(0, firstFault - EXCERPT_BEFORE),
                  Math.min(text.length(), firstFault + EXCERPT_AFTER))));
    }
    if (text.indexOf("\0") >= 0) {
      faults.add(new LineFault.NulByte());
    }
    return new LineText(text.toString().replace("\0", VISIBLE_NUL), faults);
  }
}

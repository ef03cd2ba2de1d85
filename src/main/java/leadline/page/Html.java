package leadline.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Map;

/**
 * A page as HTML. Style and script are in the file; its policy lets the browser run these two and
 * load nothing.
 */
final class Html {

  private static final String NOTHING_ELSE =
      "default-src 'none'; base-uri 'none'; form-action 'none'; style-src ";

  private final TemplateEngine templates =
      TemplateEngine.createPrecompiled(null, ContentType.Html, Html.class.getClassLoader());
  private final String style = resource("page.css");
  private final String script = resource("page.js");

  String of(Page page) {
    StringOutput html = new StringOutput();
    templates.render(
        "page.jte",
        Map.of("page", page, "policy", policy(), "style", style, "script", script),
        html);
    return html.toString();
  }

  /** A briefing has no script. */
  String of(Briefing briefing) {
    String sheet = style + resource("briefing.css");
    StringOutput html = new StringOutput();
    templates.render(
        "briefing.jte",
        Map.of("briefing", briefing, "policy", NOTHING_ELSE + digest(sheet), "style", sheet),
        html);
    return html.toString();
  }

  private String policy() {
    return NOTHING_ELSE + digest(style) + "; script-src " + digest(script);
  }

  private static String digest(String content) {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(content.getBytes(StandardCharsets.UTF_8));
      return "'sha256-" + Base64.getEncoder().encodeToString(hash) + "'";
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  private static String resource(String name) {
    try (InputStream stream = Html.class.getResourceAsStream("/leadline/page/" + name)) {
      if (stream == null) {
        throw new IllegalStateException("not in the program: " + name);
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

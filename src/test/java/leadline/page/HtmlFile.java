package leadline.page;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** A page read back by a strict parser: what it takes without complaint is nested and escaped. */
public record HtmlFile(Path path, Document document) {

  public static HtmlFile read(Path path) throws IOException {
    return new HtmlFile(path, parse(Files.readString(path, StandardCharsets.UTF_8)));
  }

  /** The pages of a run's folder. */
  public static List<HtmlFile> all(Path run) throws IOException {
    List<HtmlFile> pages = new ArrayList<>();
    try (Stream<Path> files = Files.list(run.resolve("report"))) {
      for (Path file : files.filter(name -> name.toString().endsWith(".html")).sorted().toList()) {
        pages.add(read(file));
      }
    }
    return pages;
  }

  static Document parse(String html) {
    // the text of a script is not escaped in HTML
    String withoutScript = html.replaceAll("(?s)<(script|style)>.*?</\\1>", "");
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(new InputSource(new StringReader(withoutScript)));
    } catch (ParserConfigurationException | SAXException | IOException e) {
      throw new AssertionError("the page is not well formed", e);
    }
  }

  public List<Element> elements(String tag) {
    return below(document.getDocumentElement(), tag);
  }

  public static List<Element> below(Element element, String tag) {
    NodeList found = element.getElementsByTagName(tag);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < found.getLength(); i++) {
      elements.add((Element) found.item(i));
    }
    return elements;
  }

  /** The elements directly inside. */
  public static List<Element> in(Element element) {
    List<Element> elements = new ArrayList<>();
    for (Node node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element child) {
        elements.add(child);
      }
    }
    return elements;
  }

  @Override
  public String toString() {
    return String.valueOf(path.getFileName());
  }
}

package wainbook.print;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/** A whole XHTML document round a body: head, stylesheet, outline. */
final class Markup {

    private static final Pattern NO_XML =
            Pattern.compile("[^\\t\\n\\r\\x{20}-\\x{D7FF}\\x{E000}-\\x{FFFD}\\x{10000}-\\x{10FFFF}]");

    private static final String STYLE = style();

    private Markup() {}

    /** @throws IllegalArgumentException naming line and column, if the body is not well-formed */
    static Document of(PdfPage page) {
        Heading heading = page.heading();
        Document document = parsed("<html lang=\"" + escaped(heading.language().toLanguageTag()) + "\"><head><title>"
                + escaped(heading.title()) + "</title><meta name=\"subject\" content=\"" + escaped(heading.about())
                + "\"/><style>" + STYLE + "</style></head><body>"
                + NO_XML.matcher(page.body()).replaceAll("\uFFFD")
                + "</body></html>");
        Outline.addTo(document);
        return document;
    }

    private static Document parsed(String text) {
        try {
            var factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            var builder = factory.newDocumentBuilder();
            builder.setErrorHandler(THROWN);
            return builder.parse(new InputSource(new StringReader(text)));
        } catch (SAXParseException e) {
            throw new IllegalArgumentException(
                    "line " + e.getLineNumber() + ", column " + e.getColumnNumber() + ": " + e.getMessage(), e);
        } catch (SAXException | ParserConfigurationException e) {
            throw new IllegalArgumentException(e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The parser's own handler writes to the console. */
    private static final ErrorHandler THROWN = new ErrorHandler() {
        @Override
        public void warning(SAXParseException e) throws SAXException {
            throw e;
        }

        @Override
        public void error(SAXParseException e) throws SAXException {
            throw e;
        }

        @Override
        public void fatalError(SAXParseException e) throws SAXException {
            throw e;
        }
    };

    static Element element(Document document, String name) {
        return (Element) document.getElementsByTagName(name).item(0);
    }

    private static String escaped(String text) {
        return NO_XML.matcher(text)
                .replaceAll("\uFFFD")
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace("\"", "&quot;");
    }

    private static String style() {
        try (InputStream bytes = Markup.class.getResourceAsStream("/print/print.css")) {
            return escaped(new String(bytes.readAllBytes(), StandardCharsets.UTF_8))
                    .replace("&quot;", "\"")
                    .replace('\n', ' ');
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
